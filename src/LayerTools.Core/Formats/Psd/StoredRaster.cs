using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Colors;
using LayerTools.Pixels.Compositing;

namespace LayerTools.Formats.Psd;

/// <summary>The merged picture that a file stores, as RGB on transparency.</summary>
internal static class StoredRaster
{
    /// <summary>Reads the picture. Where it has transparency the white that its colours lie on is taken out of them.</summary>
    /// <exception cref="LayeredFileException">The picture is damaged or too large, the file changed on disk, or its colours cannot be turned to RGB.</exception>
    public static Raster Read(LayerFile file)
    {
        const string Section = "merged picture";
        SampleConverter.EnsureSupported(file, Section);
        var detail = (PsdFileDetail)file.Detail;
        var (width, height) = (detail.Header.Width, detail.Header.Height);
        if (4L * width * height > int.MaxValue) throw TooLarge(file.Path, Section);
        using var opened = new OpenedSources();
        using var reader = new PixelReader(file);
        var converter = reader.CreateConverter();
        var hasAlpha = detail.LayerInfo is { FirstAlphaIsTransparency: true } && detail.Header.Channels > converter.ChannelCount;
        var picture = new StoredPicture(detail, opened, file.Path);
        var channels = Enumerable.Range(0, converter.ChannelCount + (hasAlpha ? 1 : 0)).Select(picture.OpenChannel).ToArray();
        var values = channels.Select(_ => new float[width]).ToArray();
        var stored = new byte[picture.RowBytes];
        var raster = new Raster(width, height);
        for (var y = 0; y < height; y++)
        {
            for (var channel = 0; channel < channels.Length; channel++)
            {
                channels[channel].ReadRow(stored);
                Samples.Decode(stored, detail.Header.Depth, values[channel]);
            }

            var row = raster.Row(y);
            if (hasAlpha) TakeOutWhite(values, Whites.Of(file));
            ColorRows.Convert(values.AsSpan(0, converter.ChannelCount).ToArray(), converter, row);
            for (var x = 0; x < width; x++) row[(4 * x) + 3] = hasAlpha ? (byte)((Math.Max(0f, Math.Min(1f, values[converter.ChannelCount][x])) * byte.MaxValue) + 0.5f) : IsTransparent(file, values[0][x]) ? (byte)0 : byte.MaxValue;
        }

        return raster;
    }

    private static bool IsTransparent(LayerFile file, float value) => file.ColorMode == ColorMode.Indexed && file.Detail.TransparentIndex is { } index && (int)((value * byte.MaxValue) + 0.5f) == index;

    private static void TakeOutWhite(float[][] values, float[] whites)
    {
        var alpha = values[values.Length - 1];
        for (var channel = 0; channel < values.Length - 1; channel++)
        {
            var colors = values[channel];
            for (var x = 0; x < colors.Length; x++) colors[x] = alpha[x] > 0 ? (colors[x] - (whites[channel] * (1f - alpha[x]))) / alpha[x] : 0f;
        }
    }

    private static LayeredFileException TooLarge(string path, string section) =>
        new(LayeredFileErrorKind.LimitExceeded, path, section, -1, "It needs more than 2 GB of memory.", "Make a smaller copy where the file was made.");
}
