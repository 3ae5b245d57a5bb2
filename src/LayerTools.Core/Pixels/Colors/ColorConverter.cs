using LayerTools.Model;

namespace LayerTools.Pixels.Colors;

/// <summary>Turns pixels of a file's own colours to RGB as screens show it.</summary>
internal abstract class ColorConverter
{
    /// <summary>Channels that make a colour.</summary>
    public abstract int ChannelCount { get; }

    /// <summary>What a picture so converted may lack, in words; null if the conversion is exact.</summary>
    public virtual string? Note => null;

    /// <summary>Whether the file's pixels can be turned to RGB.</summary>
    public static bool CanConvert(LayerFile file) => file.ColorMode switch
    {
        ColorMode.Bitmap => file.BitDepth == 1,
        ColorMode.Indexed => file.BitDepth == 8,
        ColorMode.Multichannel => false,
        _ => file.BitDepth is 8 or 16 or 32,
    };

    /// <summary>The converter for a file; <see cref="CanConvert"/> must hold.</summary>
    public static ColorConverter Create(LayerFile file, PixelReader reader) => file.ColorMode switch
    {
        ColorMode.Rgb => new LightConverter(3, file.BitDepth),
        ColorMode.Lab => new LabConverter(),
        ColorMode.Indexed => new PaletteConverter(reader.ReadPalette()),
        ColorMode.Cmyk => ProfileTable.TryRead(reader.ReadProfile()) is { ChannelCount: InkConverter.InkCount } table ? new ProfileConverter(table) : new InkConverter(),
        ColorMode.Bitmap => new BitmapConverter(),
        _ => new LightConverter(1, file.BitDepth),
    };

    /// <summary>Converts one pixel.</summary>
    /// <param name="channels">The stored values, 0 to 1.</param>
    /// <param name="rgb">Three bytes.</param>
    public abstract void Convert(ReadOnlySpan<float> channels, Span<byte> rgb);

    protected static byte ToByte(double value) => (byte)((value > 0 ? Math.Min(value, 1) * byte.MaxValue : 0) + 0.5);

    /// <summary>Writes linear light in the sRGB encoding.</summary>
    protected static void Write(RgbTriple light, Span<byte> rgb)
    {
        rgb[0] = SampleConverter.EncodeLight((float)light.Red);
        rgb[1] = SampleConverter.EncodeLight((float)light.Green);
        rgb[2] = SampleConverter.EncodeLight((float)light.Blue);
    }
}
