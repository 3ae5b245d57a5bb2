namespace LayerTools.Pixels.Compositing.Sinks;

/// <summary>Turns drawn rows into samples of the merged picture, whose colours lie on white (PSD-format files with transparency are matted so), and hands them on in bands.</summary>
internal sealed class MergedSink(float[] whites, bool withAlpha, int width, int bitDepth, int maxRows, Action<MergedBand> consume) : IRowSink
{
    private readonly MergedBand band = new(whites.Length + (withAlpha ? 1 : 0), checked(width * (bitDepth / 8)), maxRows);

    public void BeginBand(int top, int count)
    {
        band.Top = top;
        band.RowCount = count;
    }

    public void Accept(int row, PixelRow pixels)
    {
        for (var channel = 0; channel < whites.Length; channel++)
        {
            Matte(pixels.Colors[channel], pixels.Alpha, whites[channel]);
            Samples.Encode(pixels.Colors[channel].AsSpan(0, width), bitDepth, band.GetRow(channel, row));
        }

        if (withAlpha) Samples.Encode(pixels.Alpha.AsSpan(0, width), bitDepth, band.GetRow(whites.Length, row));
    }

    public void EndBand() => consume(band);

    private void Matte(float[] premultiplied, float[] alpha, float white)
    {
        for (var x = 0; x < width; x++) premultiplied[x] += white * (1f - alpha[x]);
    }
}
