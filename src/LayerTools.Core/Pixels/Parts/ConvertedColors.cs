using LayerTools.Model;
using LayerTools.Pixels.Colors;

namespace LayerTools.Pixels.Parts;

/// <summary>Colours of other kinds, turned to red, green and blue row by row.</summary>
internal sealed class ConvertedColors(PixelReader reader, Layer part, ColorConverter converter) : PartColors
{
    private readonly ColorRows rows = new(reader, part, part.Bounds.Width, converter);
    private readonly byte[] pixels = new byte[checked(4 * part.Bounds.Width)];
    private readonly byte[][] channels = [new byte[part.Bounds.Width], new byte[part.Bounds.Width], new byte[part.Bounds.Width]];

    public override ReadOnlySpan<byte> Red => channels[0];

    public override ReadOnlySpan<byte> Green => channels[1];

    public override ReadOnlySpan<byte> Blue => channels[2];

    public override void ReadNext()
    {
        rows.ReadNext(pixels);
        for (var channel = 0; channel < channels.Length; channel++)
        {
            var values = channels[channel];
            for (var x = 0; x < values.Length; x++) values[x] = pixels[(4 * x) + channel];
        }
    }

    public override void SkipNext() => rows.SkipNext();

    public override void Dispose() => rows.Dispose();
}
