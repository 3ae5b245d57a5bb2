namespace LayerTools.Pixels.Colors;

/// <summary>Numbers of colours in a palette: 256 reds, 256 greens, 256 blues (PSD File Formats Specification, 'Color mode data section').</summary>
internal sealed class PaletteConverter : ColorConverter
{
    private const int Colors = 256;
    private readonly byte[] palette = new byte[3 * Colors];

    /// <summary>A palette; colours that it lacks are black.</summary>
    public PaletteConverter(byte[] palette) => palette.AsSpan(0, Math.Min(palette.Length, this.palette.Length)).CopyTo(this.palette);

    public override int ChannelCount => 1;

    public override void Convert(ReadOnlySpan<float> channels, Span<byte> rgb)
    {
        var number = ToByte(channels[0]);
        for (var place = 0; place < 3; place++) rgb[place] = palette[(place * Colors) + number];
    }
}
