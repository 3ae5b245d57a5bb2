using LayerTools.Model.Fills;

namespace LayerTools.Pixels.Compositing.Fills;

/// <summary>
/// A gradient over a rectangle. Its line runs through the middle of the rectangle and just fits it; the ends are whole pixels, rounded down,
/// and pixels count by their corner (measured on real files whose gradients are stored as pixels too). Mirrored, radial, conic and four-sided
/// ones run from the middle, with half the line as their length. That four-sided ones stand on a corner is from memory.
/// </summary>
internal sealed class GradientPixels : PixelSource
{
    /// <summary>Keeps whole pixels whole: files store places as fractions of the canvas, in steps of up to 1/500 px.</summary>
    private const double Slack = 1.0 / 128;

    private const double Tiny = 1e-6;

    private readonly GradientTable table;
    private readonly GradientForm form;
    private readonly double startX;
    private readonly double startY;
    private readonly double runX;
    private readonly double runY;

    public GradientPixels(GradientFill fill, FillBox box, int channelCount)
    {
        table = new GradientTable(fill.Gradient, channelCount, fill.IsReversed);
        form = fill.Form;
        var angle = fill.Angle * Math.PI / 180;
        var (cos, sin) = (Math.Cos(angle), Math.Sin(angle));
        var half = Math.Min(Divide(box.Width, cos), Divide(box.Height, sin)) * fill.Scale / 2;
        var middleX = ((box.Left + box.Right) / 2) + (fill.RightShift * box.Width);
        var middleY = ((box.Top + box.Bottom) / 2) + (fill.DownShift * box.Height);
        var (endX, endY) = (RoundDown(middleX + (cos * half)), RoundDown(middleY - (sin * half)));
        (startX, startY) = form == GradientForm.Linear
            ? (RoundDown(middleX - (cos * half)), RoundDown(middleY + (sin * half)))
            : (RoundDown(middleX), RoundDown(middleY));
        (runX, runY) = (endX - startX, endY - startY);
    }

    public override Coverage GetCoverage(int y, int x, int count) => table.IsOpaque ? Coverage.Full : Coverage.Some;

    public override void ReadColors(PixelRow row, int at, int y, int x, int count)
    {
        for (var i = 0; i < count; i++)
        {
            var place = GetPlace(x + i, y);
            for (var channel = 0; channel < row.Colors.Length; channel++) row.Colors[channel][at + i] = table.GetColor(channel, place);
        }
    }

    public override void ReadAlpha(Span<float> samples, int y, int x)
    {
        if (table.IsOpaque)
        {
            samples.Fill(1f);
            return;
        }

        for (var i = 0; i < samples.Length; i++) samples[i] = table.GetAlpha(GetPlace(x + i, y));
    }

    private static double Divide(double side, double part) => Math.Abs(part) < Tiny ? double.MaxValue : side / Math.Abs(part);

    private static double RoundDown(double value) => Math.Floor(value + Slack);

    private double GetPlace(int x, int y)
    {
        var (right, down) = (x - startX, y - startY);
        var squared = (runX * runX) + (runY * runY);
        if (form == GradientForm.Conic)
        {
            var turn = (Math.Atan2(down, right) - Math.Atan2(runY, runX)) / (2 * Math.PI);
            return turn - Math.Floor(turn);
        }

        if (squared == 0) return 1;
        var along = ((right * runX) + (down * runY)) / squared;
        switch (form)
        {
            case GradientForm.Linear: return along;
            case GradientForm.Mirrored: return Math.Abs(along);
            case GradientForm.Radial: return Math.Sqrt(((right * right) + (down * down)) / squared);
            default: return Math.Abs(along) + Math.Abs(((down * runX) - (right * runY)) / squared);
        }
    }
}
