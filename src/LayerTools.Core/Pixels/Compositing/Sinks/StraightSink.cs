using LayerTools.Pixels.Colors;

namespace LayerTools.Pixels.Compositing.Sinks;

/// <summary>Turns drawn rows into RGB and alpha of 8 bits, not premultiplied, and hands them on in bands. What is fully transparent has no colour.</summary>
internal sealed class StraightSink(ColorConverter converter, int width, int maxRows, Action<MergedBand> consume) : IRowSink
{
    /// <summary>Red, green, blue, alpha.</summary>
    public const int ChannelCount = 4;

    private readonly MergedBand band = new(ChannelCount, width, maxRows);

    public void BeginBand(int top, int count)
    {
        band.Top = top;
        band.RowCount = count;
    }

    public void Accept(int row, PixelRow pixels)
    {
        var red = band.GetRow(0, row);
        var green = band.GetRow(1, row);
        var blue = band.GetRow(2, row);
        var alpha = band.GetRow(3, row);
        Samples.Encode(pixels.Alpha.AsSpan(0, width), 8, alpha);
        Span<float> color = stackalloc float[converter.ChannelCount];
        Span<byte> rgb = stackalloc byte[3];
        for (var x = 0; x < width; x++)
        {
            if (alpha[x] == 0)
            {
                red[x] = green[x] = blue[x] = 0;
                continue;
            }

            for (var channel = 0; channel < color.Length; channel++) color[channel] = pixels.Colors[channel][x] / pixels.Alpha[x];
            converter.Convert(color, rgb);
            (red[x], green[x], blue[x]) = (rgb[0], rgb[1], rgb[2]);
        }
    }

    public void EndBand() => consume(band);
}
