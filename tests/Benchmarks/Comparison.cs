using System.Diagnostics;
using System.Text.Json;
using LayerTools.Deliveries;
using LayerTools.Model;

namespace LayerTools.Benchmarks;

/// <summary>LayerTools' side of the comparison, in a warm process, as JSON: the quickest run where only the processor counts, the median where the disk does.</summary>
internal static class Comparison
{
    private const int Runs = 7;

    private const int WarmRuns = 40;

    /// <summary>Long enough for the runtime to have compiled everything for good: it does that in the background, a while after the last new method.</summary>
    private static readonly TimeSpan warmUp = TimeSpan.FromSeconds(2);

    private static readonly JsonSerializerOptions camelCase = new() { PropertyNamingPolicy = JsonNamingPolicy.CamelCase };

    public static void Print(string path)
    {
        var layers = Work.ReadTree(path).LayerCount;
        var tree = MeasureTree(path);
        var (copy, save) = MeasureSave(path);
        var (mirror, mirrored) = MeasureMirror(path);
        var (images, imageBytes) = MeasureImages(path);
        var result = new
        {
            Layers = layers,
            FileBytes = new FileInfo(path).Length,
            TreeMs = tree,
            TreeBytes = CountTreeBytes(path),
            CopyMs = copy,
            SaveMs = save,
            MirrorMs = mirror,
            Mirrored = mirrored,
            CompositeMs = MeasureComposite(path),
            CheckMs = MeasureCheck(path),
            DeliveryMs = MeasureDelivery(path),
            ImagesMs = images,
            ImageBytes = imageBytes,
            SheetMs = MeasureSheet(path),
            PdfBytes = Work.WriteSheet(Work.ReadTree(path), "sheet.pdf"),
        };
        Console.WriteLine(JsonSerializer.Serialize(result, camelCase));
    }

    /// <summary>The comparison of deliveries alone.</summary>
    public static void PrintDelivery(string path) => Console.WriteLine(JsonSerializer.Serialize(new { DeliveryMs = MeasureDelivery(path) }, camelCase));

    private static double MeasureTree(string path)
    {
        WarmUp(() => Work.ReadTree(path));
        return Enumerable.Range(0, WarmRuns).Min(_ => Time(() => Work.ReadTree(path)));
    }

    private static long CountTreeBytes(string path)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        Work.ReadTree(path);
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }

    /// <summary>By turns, so that what else the disk does meets both.</summary>
    private static (double Copy, double Save) MeasureSave(string path)
    {
        var copied = Path.ChangeExtension(path, ".copied.psd");
        var saved = Path.ChangeExtension(path, ".saved.psd");
        try
        {
            Work.CopyWithFlush(path, copied);
            Work.RenameAllAndSave(path, saved);
            List<double> copies = [], saves = [];
            for (var i = 0; i < Runs; i++)
            {
                copies.Add(Time(() => Work.CopyWithFlush(path, copied)));
                saves.Add(Time(() => Work.RenameAllAndSave(path, saved)));
            }

            return (Median(copies), Median(saves));
        }
        finally
        {
            File.Delete(copied);
            File.Delete(saved);
        }
    }

    /// <summary>The time, and which layers of the file were reflected: their numbers before the edit.</summary>
    private static (double Milliseconds, List<int> Mirrored) MeasureMirror(string path)
    {
        var file = Work.ReadTree(path);
        var originals = file.GetLayers().Where(layer => !layer.IsGroup && !layer.Bounds.IsEmpty).Select(layer => (layer.LayerNumber, Layer: layer)).ToList();
        var newLayers = Work.Mirror(file).SelectMany(copy => copy.GetLayers().Prepend(copy)).Where(copy => !copy.IsGroup && !copy.Bounds.IsEmpty).ToList();
        var copies = newLayers.Select(copy => copy.Bounds).ToHashSet();
        var mirrored = originals.Where(item => copies.Contains(Reflect(item.Layer.Bounds, file.Width)) && item.Layer.Side != Names.Side.Right).Select(item => item.LayerNumber).ToList();
        if (mirrored.Count != newLayers.Count) throw new InvalidOperationException(FormattableString.Invariant($"{newLayers.Count} layers are new, but {mirrored.Count} originals were found."));

        WarmUp(() => Work.Mirror(Work.ReadTree(path)));
        var best = double.MaxValue;
        for (var i = 0; i < WarmRuns; i++)
        {
            var fresh = Work.ReadTree(path);
            best = Math.Min(best, Time(() => Work.Mirror(fresh)));
        }

        return (best, mirrored);
    }

    private static double MeasureComposite(string path)
    {
        var file = Work.ReadTree(path);
        WarmUp(() => Work.Composite(file));
        return Enumerable.Range(0, Runs).Min(_ => Time(() => Work.Composite(file)));
    }

    private static double MeasureCheck(string path)
    {
        WarmUp(() => Work.Check(path));
        return Enumerable.Range(0, Runs).Min(_ => Time(() => Work.Check(path)));
    }

    /// <summary>Two deliveries of one figure in which five parts differ, the largest ones.</summary>
    private static double MeasureDelivery(string path)
    {
        const int Repainted = 5;
        var delivery = Path.ChangeExtension(path, ".delivery.psd");
        try
        {
            Work.RepaintAndSave(path, delivery, Repainted);
            var found = Work.Compare(path, delivery).Differences.Count(difference => difference.Change == LayerChange.Repainted);
            if (found != Repainted) throw new InvalidOperationException(FormattableString.Invariant($"{found} parts were found repainted instead of {Repainted}."));
            WarmUp(() => Work.Compare(path, delivery));
            return Enumerable.Range(0, Runs).Min(_ => Time(() => Work.Compare(path, delivery)));
        }
        finally
        {
            File.Delete(delivery);
        }
    }

    private static double MeasureSheet(string path)
    {
        var file = Work.ReadTree(path);
        WarmUp(() => Work.WriteSheet(file, "sheet.png"));
        return Median([.. Enumerable.Range(0, Runs).Select(_ => Time(() => Work.WriteSheet(file, "sheet.png")))]);
    }

    private static (double Milliseconds, long Bytes) MeasureImages(string path)
    {
        var folder = Directory.CreateTempSubdirectory("layertools-bench-").FullName;
        try
        {
            var file = Work.ReadTree(path);
            var bytes = 0L;
            WarmUp(() => bytes = Work.WriteImages(file, folder));
            return (Median([.. Enumerable.Range(0, Runs).Select(_ => Time(() => Work.WriteImages(file, folder)))]), bytes);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static Bounds Reflect(Bounds bounds, int width) => new(width - bounds.Right, bounds.Top, width - bounds.Left, bounds.Bottom);

    private static void WarmUp(Action work)
    {
        for (var watch = Stopwatch.StartNew(); watch.Elapsed < warmUp;) work();
    }

    private static double Median(List<double> times)
    {
        times.Sort();
        return times[times.Count / 2];
    }

    private static double Time(Action work)
    {
        var watch = Stopwatch.StartNew();
        work();
        return watch.Elapsed.TotalMilliseconds;
    }
}
