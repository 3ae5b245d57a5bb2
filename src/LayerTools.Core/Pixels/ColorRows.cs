using LayerTools.Model;
using LayerTools.Pixels.Colors;
using LayerTools.Pixels.Compositing;

namespace LayerTools.Pixels;

/// <summary>Rows of a layer's colours turned to RGB, one after the other from the top. Rows that nobody looks at are passed over without being unpacked.</summary>
internal sealed class ColorRows : IDisposable
{
    private readonly ColorConverter converter;
    private readonly PlaneRows?[] rows;
    private readonly float[][] values;
    private byte[] stored = [];
    private int skipped;

    /// <summary>The rows of a layer whose colours <paramref name="converter"/> turns to RGB; channels that it lacks read as 0.</summary>
    public ColorRows(PixelReader reader, Layer layer, int width, ColorConverter converter)
    {
        this.converter = converter;
        rows = new PlaneRows?[converter.ChannelCount];
        values = new float[rows.Length][];
        for (var channel = 0; channel < rows.Length; channel++)
        {
            rows[channel] = reader.OpenRows(layer, PlaneRole.Color0 + channel);
            values[channel] = new float[width];
        }
    }

    /// <summary>Writes the next row into the colours of pixels of four bytes.</summary>
    public void ReadNext(Span<byte> pixels)
    {
        for (var channel = 0; channel < rows.Length; channel++)
        {
            if (rows[channel] is not { } open) continue;
            open.SkipRows(skipped);
            if (stored.Length < open.RowBytes) stored = new byte[open.RowBytes];
            open.ReadRow(stored.AsSpan(0, open.RowBytes));
            Samples.Decode(stored.AsSpan(0, open.RowBytes), open.BitDepth, values[channel]);
        }

        skipped = 0;
        Convert(values, converter, pixels);
    }

    public void SkipNext() => skipped++;

    public void Dispose()
    {
        foreach (var open in rows) open?.Dispose();
    }

    /// <summary>Converts a row that is in memory, channel by channel.</summary>
    public static void Convert(float[][] channels, ColorConverter converter, Span<byte> pixels)
    {
        Span<float> color = stackalloc float[channels.Length];
        for (var x = 0; x < pixels.Length / 4; x++)
        {
            for (var channel = 0; channel < channels.Length; channel++) color[channel] = channels[channel][x];
            converter.Convert(color, pixels.Slice(4 * x, 3));
        }
    }
}
