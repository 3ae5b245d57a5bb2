using LayerTools.Model.Fills;

namespace LayerTools.Pixels.Compositing.Fills;

/// <summary>A picture repeated over the canvas. In another size than its own it is read by bilinear interpolation, across its edges to its other side.</summary>
internal sealed class PatternPixels(Pattern pattern, PatternFill fill) : PixelSource
{
    private readonly bool isOwnSize = fill.Scale == 1 && fill.Right == Math.Floor(fill.Right) && fill.Down == Math.Floor(fill.Down);

    public override Coverage GetCoverage(int y, int x, int count) => pattern.Alpha is null ? Coverage.Full : Coverage.Some;

    public override void ReadColors(PixelRow row, int at, int y, int x, int count)
    {
        for (var channel = 0; channel < row.Colors.Length; channel++)
        {
            var target = row.Colors[channel].AsSpan(at, count);
            if (row.Colors.Length == 1 && pattern.Colors.Count == 3) ReadGrey(target, y, x);
            else Read(pattern.Colors[Math.Min(channel, pattern.Colors.Count - 1)], target, y, x);
        }
    }

    public override void ReadAlpha(Span<float> samples, int y, int x)
    {
        if (pattern.Alpha is null) samples.Fill(1f);
        else Read(pattern.Alpha, samples, y, x);
    }

    private void ReadGrey(Span<float> target, int y, int x)
    {
        Span<float> parts = stackalloc float[3];
        for (var i = 0; i < target.Length; i++)
        {
            for (var channel = 0; channel < 3; channel++) Read(pattern.Colors[channel], parts.Slice(channel, 1), y, x + i);
            target[i] = new FillColor(parts[0], parts[1], parts[2]).Get(0, 1);
        }
    }

    private void Read(float[] samples, Span<float> target, int y, int x)
    {
        if (isOwnSize)
        {
            var row = Wrap(y - fill.Down, pattern.Height) * pattern.Width;
            var column = Wrap(x - fill.Right, pattern.Width);
            for (var i = 0; i < target.Length; i++)
            {
                target[i] = samples[row + column];
                if (++column == pattern.Width) column = 0;
            }

            return;
        }

        var v = ((y + 0.5 - fill.Down) / fill.Scale) - 0.5;
        var (above, below) = (Wrap(v, pattern.Height) * pattern.Width, Wrap(v + 1, pattern.Height) * pattern.Width);
        var down = (float)(v - Math.Floor(v));
        for (var i = 0; i < target.Length; i++)
        {
            var u = ((x + i + 0.5 - fill.Right) / fill.Scale) - 0.5;
            var (left, right) = (Wrap(u, pattern.Width), Wrap(u + 1, pattern.Width));
            var across = (float)(u - Math.Floor(u));
            var top = samples[above + left] + ((samples[above + right] - samples[above + left]) * across);
            var bottom = samples[below + left] + ((samples[below + right] - samples[below + left]) * across);
            target[i] = top + ((bottom - top) * down);
        }
    }

    private static int Wrap(double place, int length)
    {
        var rest = Math.Floor(place) % length;
        return (int)(rest < 0 ? rest + length : rest);
    }
}
