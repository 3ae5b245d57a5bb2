using LayerTools.Model;

namespace LayerTools.Pixels.Parts;

/// <summary>Colours that are stored as red, green and blue, or as grey.</summary>
internal sealed class StoredColors : PartColors
{
    private readonly ByteRows[] channels;
    private readonly int green;
    private readonly int blue;

    public StoredColors(PixelReader reader, Layer part, bool isGrey)
    {
        channels = new ByteRows[isGrey ? 1 : 3];
        for (var channel = 0; channel < channels.Length; channel++)
        {
            channels[channel] = new ByteRows(reader.OpenRows(part, PlaneRole.Color0 + channel), part.Bounds.Width, missing: 0, isLight: true);
        }

        (green, blue) = isGrey ? (0, 0) : (1, 2);
    }

    public override ReadOnlySpan<byte> Red => channels[0].Current;

    public override ReadOnlySpan<byte> Green => channels[green].Current;

    public override ReadOnlySpan<byte> Blue => channels[blue].Current;

    public override void ReadNext()
    {
        foreach (var channel in channels) channel.ReadNext();
    }

    public override void SkipNext()
    {
        foreach (var channel in channels) channel.SkipNext();
    }

    public override void Dispose()
    {
        foreach (var channel in channels) channel.Dispose();
    }
}
