using LayerTools.Pixels;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;
using SixLabors.ImageSharp.Processing;
using SixLabors.ImageSharp.Processing.Processors.Transforms;

namespace LayerTools.Tests.Measures.Detail;

/// <summary>Invented art for tests: smooth-edged blots and strokes of random colours on nothing, the same for the same seed; and what ImageSharp makes of art.</summary>
internal static class DrawnPictures
{
    private const int Samples = 4;

    public static Raster Draw(int side, int seed)
    {
        var random = new Random(seed);
        var raster = new Raster(side, side);
        for (var shape = 0; shape < 40; shape++)
        {
            var (centerX, centerY) = (side * (0.15 + (0.7 * random.NextDouble())), side * (0.15 + (0.7 * random.NextDouble())));
            var (wide, high, angle) = (side * (0.01 + (0.12 * random.NextDouble())), side * (0.01 + (0.12 * random.NextDouble())), Math.PI * random.NextDouble());
            var color = new[] { random.Next(256), random.Next(256), random.Next(256) };
            var reach = (int)Math.Max(wide, high) + 2;
            for (var y = Math.Max(0, (int)centerY - reach); y < Math.Min(side, (int)centerY + reach); y++)
            {
                for (var x = Math.Max(0, (int)centerX - reach); x < Math.Min(side, (int)centerX + reach); x++) Blend(raster, x, y, color, Cover(x - centerX, y - centerY, wide, high, angle));
            }
        }

        return raster;
    }

    public static Raster Enlarge(Raster raster, double factor, IResampler filter) =>
        Process(raster, image => image.Resize((int)Math.Round(raster.Width * factor), (int)Math.Round(raster.Height * factor), filter));

    public static Raster Soften(Raster raster, float sigma) => Process(raster, image => image.GaussianBlur(sigma));

    /// <summary>On white, packed and unpacked as JPEG.</summary>
    public static Raster ThroughJpeg(Raster raster, int quality)
    {
        using var image = ToImage(raster);
        image.Mutate(context => context.BackgroundColor(Color.White));
        using var stream = new MemoryStream();
        image.Save(stream, new SixLabors.ImageSharp.Formats.Jpeg.JpegEncoder { Quality = quality });
        using var unpacked = Image.Load<Rgba32>(stream.ToArray());
        return ToRaster(unpacked);
    }

    private static Raster Process(Raster raster, Action<IImageProcessingContext> change)
    {
        using var image = ToImage(raster);
        image.Mutate(change);
        return ToRaster(image);
    }

    private static Image<Rgba32> ToImage(Raster raster) => Image.LoadPixelData<Rgba32>(raster.Pixels, raster.Width, raster.Height);

    private static Raster ToRaster(Image<Rgba32> image)
    {
        var raster = new Raster(image.Width, image.Height);
        image.CopyPixelDataTo(raster.Pixels);
        return raster;
    }

    private static double Cover(double x, double y, double wide, double high, double angle)
    {
        var (sine, cosine) = Math.SinCos(angle);
        var inside = 0;
        for (var i = 0; i < Samples * Samples; i++)
        {
            var (right, down) = (x + (((i % Samples) + 0.5) / Samples), y + (((i / Samples) + 0.5) / Samples));
            var (along, across) = (((right * cosine) + (down * sine)) / wide, ((down * cosine) - (right * sine)) / high);
            if ((along * along) + (across * across) <= 1) inside++;
        }

        return inside / (double)(Samples * Samples);
    }

    private static void Blend(Raster raster, int x, int y, int[] color, double cover)
    {
        if (cover <= 0) return;
        var pixel = raster.Row(y).Slice(4 * x, 4);
        var below = pixel[3] / 255.0 * (1 - cover);
        var alpha = cover + below;
        for (var channel = 0; channel < 3; channel++) pixel[channel] = (byte)Math.Round(((color[channel] * cover) + (pixel[channel] * below)) / alpha);
        pixel[3] = (byte)Math.Round(255 * alpha);
    }
}
