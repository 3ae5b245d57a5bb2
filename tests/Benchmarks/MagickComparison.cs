using System.Diagnostics;
using System.Text.Json;
using ImageMagick;

namespace LayerTools.Benchmarks;

/// <summary>The same pictures through Magick.NET, as JSON: reading the file, merging its layers, and writing each as PNG.</summary>
internal static class MagickComparison
{
    private const int Runs = 2;

    /// <summary>How much larger than ours its pictures may be and still count as about equal.</summary>
    private const double SizeTolerance = 1.25;

    /// <summary>Tens say how hard to pack (1 to 9), ones which filter: none, to the left, to the row above, or the best for each row.</summary>
    private static readonly uint[] Qualities = [10, 11, 12, 15, 21, 22];

    public static void Print(string path, long ourBytes)
    {
        var (read, merge) = (double.MaxValue, double.MaxValue);
        var best = (Milliseconds: double.MaxValue, Bytes: 0L, Quality: 0u);
        for (var run = 0; run < Runs; run++)
        {
            using var images = new MagickImageCollection();
            read = Math.Min(read, Time(() => images.Read(path)));
            // The first image is the stored picture.
            using var layers = new MagickImageCollection(images.Skip(1).Select(image => image.Clone()));
            merge = Math.Min(merge, Time(() => layers.Merge().Dispose()));
            foreach (var quality in Qualities)
            {
                var written = Write(layers, quality);
                if (written.Bytes <= ourBytes * SizeTolerance && written.Milliseconds < best.Milliseconds) best = (written.Milliseconds, written.Bytes, quality);
            }
        }

        Console.WriteLine(JsonSerializer.Serialize(new { readMs = read, mergeMs = merge, imagesMs = best.Milliseconds, imageBytes = best.Bytes, quality = best.Quality }));
    }

    /// <summary>Writes all layers from memory, several at a time.</summary>
    private static (double Milliseconds, long Bytes) Write(MagickImageCollection layers, uint quality)
    {
        var folder = Directory.CreateTempSubdirectory("layertools-bench-");
        try
        {
            foreach (var layer in layers) (layer.Quality, layer.Format) = (quality, MagickFormat.Png32);
            var time = Time(() => Parallel.For(0, layers.Count, index => layers[index].Write(Path.Combine(folder.FullName, $"{index}.png"))));
            return (time, folder.EnumerateFiles().Sum(file => file.Length));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static double Time(Action work)
    {
        var watch = Stopwatch.StartNew();
        work();
        return watch.Elapsed.TotalMilliseconds;
    }
}
