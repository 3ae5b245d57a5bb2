using ImageMagick;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;

namespace LayerTools.Tests.Pixels.Compositing;

/// <summary>Compares what the compositor draws with the merged picture that a file stores, as an independent reader (Magick.NET) reads it. Both on white, 8 bits.</summary>
internal static class MergedPictureComparer
{
    public static (double Mean, int Max) Compare(LayerFile file)
    {
        var drawn = Draw(file);
        var stored = ReadStored(file);
        if (drawn.Length != stored.Length) throw new InvalidOperationException($"{file.Path}: the stored picture has another size.");
        var sum = 0L;
        var max = 0;
        for (var i = 0; i < drawn.Length; i++)
        {
            var difference = Math.Abs(drawn[i] - stored[i]);
            sum += difference;
            max = Math.Max(max, difference);
        }

        return (sum / (double)drawn.Length, max);
    }

    /// <summary>The largest difference of the transparency channel.</summary>
    public static int CompareAlpha(LayerFile file)
    {
        using var reader = new PixelReader(file);
        var drawn = new List<byte>();
        new Compositor(file, reader).Render(withAlpha: true, band =>
        {
            var samples = new byte[file.Width * band.RowCount];
            SampleConverter.ToBytes(band.GetRows(band.ChannelCount - 1), samples, file.BitDepth, isLight: false);
            drawn.AddRange(samples);
        });
        using var image = OpenMerged(file);
        using var pixels = image.GetPixels();
        return pixels.ToByteArray(PixelMapping.RGBA)!.Where((_, i) => i % 4 == 3).Zip(drawn, (stored, ours) => Math.Abs(stored - ours)).Max();
    }

    /// <summary>RGB, three bytes a pixel.</summary>
    public static byte[] Draw(LayerFile file)
    {
        using var reader = new PixelReader(file);
        var picture = new byte[3 * file.Width * file.Height];
        new Compositor(file, reader).Render(withAlpha: false, band =>
        {
            var samples = new byte[file.Width * band.RowCount];
            for (var channel = 0; channel < 3; channel++)
            {
                SampleConverter.ToBytes(band.GetRows(Math.Min(channel, band.ChannelCount - 1)), samples, file.BitDepth, isLight: false);
                for (var i = 0; i < samples.Length; i++) picture[(3 * ((band.Top * file.Width) + i)) + channel] = samples[i];
            }
        });
        return picture;
    }

    /// <summary>RGB, three bytes a pixel. Magick.NET takes the white out of colours under transparency, but not out of greys: those are on white as read.</summary>
    public static byte[] ReadStored(LayerFile file)
    {
        using var image = OpenMerged(file);
        using var pixels = image.GetPixels();
        var straight = pixels.ToByteArray(PixelMapping.RGBA)!;
        var picture = new byte[straight.Length / 4 * 3];
        for (var i = 0; i < picture.Length; i++)
        {
            var alpha = file.ColorMode == ColorMode.Grayscale ? (byte)255 : straight[(i / 3 * 4) + 3];
            picture[i] = (byte)(((straight[(i / 3 * 4) + (i % 3)] * alpha) + (255 * (255 - alpha)) + 127) / 255);
        }

        return picture;
    }

    private static MagickImage OpenMerged(LayerFile file) => new(file.Path, new MagickReadSettings { FrameIndex = 0, FrameCount = 1 });
}
