using LayerTools.Model.Fills;

namespace LayerTools.Pixels.Compositing.Fills;

/// <summary>One colour everywhere.</summary>
internal sealed class ColorPixels(FillColor color) : PixelSource
{
    public override Coverage GetCoverage(int y, int x, int count) => Coverage.Full;

    public override void ReadColors(PixelRow row, int at, int y, int x, int count)
    {
        for (var channel = 0; channel < row.Colors.Length; channel++) row.Colors[channel].AsSpan(at, count).Fill(color.Get(channel, row.Colors.Length));
    }

    public override void ReadAlpha(Span<float> samples, int y, int x) => samples.Fill(1f);
}
