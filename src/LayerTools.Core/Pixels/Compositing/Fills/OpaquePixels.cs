namespace LayerTools.Pixels.Compositing.Fills;

/// <summary>The same colours, opaque everywhere.</summary>
internal sealed class OpaquePixels(PixelSource pixels) : PixelSource
{
    public override Coverage GetCoverage(int y, int x, int count) => Coverage.Full;

    public override void ReadColors(PixelRow row, int at, int y, int x, int count) => pixels.ReadColors(row, at, y, x, count);

    public override void ReadAlpha(Span<float> samples, int y, int x) => samples.Fill(1f);
}
