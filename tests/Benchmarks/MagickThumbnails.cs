using System.Diagnostics;
using System.Text.Json;
using ImageMagick;

namespace LayerTools.Benchmarks;

/// <summary>Small pictures of all layers through Magick.NET, as JSON: reading the file and resizing each, several at a time. Nothing is encoded or put on a page.</summary>
internal static class MagickThumbnails
{
    private const int Runs = 2;

    public static void Print(string path, uint side)
    {
        var best = double.MaxValue;
        for (var run = 0; run < Runs; run++)
        {
            var watch = Stopwatch.StartNew();
            using var images = new MagickImageCollection();
            images.Read(path);
            // The first image is the stored picture. A side of the geometry is a most, and '>' never enlarges.
            Parallel.For(1, images.Count, index => images[index].Resize(new MagickGeometry(side, side) { Greater = true }));
            best = Math.Min(best, watch.Elapsed.TotalMilliseconds);
        }

        Console.WriteLine(JsonSerializer.Serialize(new { thumbnailsMs = best }));
    }
}
