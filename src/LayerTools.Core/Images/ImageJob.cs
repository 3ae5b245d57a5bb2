using System.Collections.Concurrent;
using System.Runtime.ExceptionServices;
using LayerTools.Model;
using LayerTools.Pixels.Compositing;

namespace LayerTools.Images;

/// <summary>One file's parts from layers to pictures and manifest.</summary>
internal sealed class ImageJob
{
    private readonly LayerFile file;
    private readonly string folder;
    private readonly ImageOptions options;
    private readonly List<ImageEntry> entries = [];
    private readonly List<(Layer Layer, Bounds Area, string Name)> pictures = [];

    public ImageJob(LayerFile file, IReadOnlyCollection<Layer> layers, string folder, ImageOptions options)
    {
        this.file = file;
        this.folder = folder;
        this.options = options;
        var names = ImageNames.Choose([.. file.GetLayers().Where(IsPart)]);
        foreach (var layer in WithGroups(file, layers))
        {
            var area = IsPart(layer) ? GetArea(layer) : Bounds.Empty;
            var missing = ImageNotes.Find(file, layer);
            if (!area.IsEmpty) pictures.Add((layer, area, names[layer]));
            entries.Add(ImageEntry.Of(layer, area.IsEmpty ? null : names[layer], area, missing));
        }
    }

    public ImageResult Run(CancellationToken cancellation)
    {
        string[] companions = [ImageManifest.SchemaName, ImageManifest.CsvName, ImageManifest.JsonName];
        using var target = new ImageFolder([.. pictures.Select(picture => Path.Combine(folder, picture.Name)), .. companions.Select(name => Path.Combine(folder, name))], options.Force);
        using var source = new PictureFile(file, options.Limits);
        foreach (var (layer, area, _) in pictures) source.EnsureReasonable(area, PlaceOf(layer));
        DrawAll(source, target, cancellation);
        var manifest = ImageManifest.Create(file, options, entries);
        target.Write(pictures.Count, ImageManifest.ReadSchema());
        target.Write(pictures.Count + 1, manifest.ToCsv());
        target.Write(pictures.Count + 2, manifest.ToJson());
        cancellation.ThrowIfCancellationRequested();
        return new ImageResult(target.Commit(), pictures.Count, [.. ImageNotes.Sum(entries), .. ImageNotes.FindProfileNotes(file)]);
    }

    /// <summary>Groups and adjustments have no pixels of their own.</summary>
    private static bool IsPart(Layer layer) => layer.Kind is not (LayerKind.Group or LayerKind.Adjustment);

    private static string PlaceOf(Layer layer) => $"layer '{layer.LayerPath}'";

    /// <summary>The layers and the groups around them, front to back: a part is seen as its groups let it be seen.</summary>
    private static List<Layer> WithGroups(LayerFile file, IEnumerable<Layer> layers)
    {
        var all = new HashSet<Layer>(layers);
        foreach (var layer in all.ToList())
        {
            for (var group = layer.GetParent(); group is not null && all.Add(group);) group = group.GetParent();
        }

        return Selection.InStackOrder(file, all);
    }

    /// <summary>Largest first, so that no thread is left with a large one when the others are done.</summary>
    private void DrawAll(PictureFile source, ImageFolder target, CancellationToken cancellation)
    {
        var processors = options.Parallelism ?? Environment.ProcessorCount;
        var order = Enumerable.Range(0, pictures.Count).OrderByDescending(index => pictures[index].Area.Area);
        var parallel = new ParallelOptions { MaxDegreeOfParallelism = processors, CancellationToken = cancellation };
        var threads = Math.Max(1, processors / Math.Max(1, pictures.Count));
        var done = 0;
        try
        {
            Parallel.ForEach(Partitioner.Create(order, EnumerablePartitionerOptions.NoBuffering), parallel, index =>
            {
                var (layer, area, _) = pictures[index];
                var drawing = new CompositeOptions { Subject = layer, Plain = true, Unmasked = options.NoMask, Threads = threads, Cancellation = cancellation };
                target.Write(index, stream => source.Draw(drawing, area, PlaceOf(layer), stream));
                options.Progress?.Invoke(Interlocked.Increment(ref done), pictures.Count);
            });
        }
        catch (AggregateException errors)
        {
            // An error keeps its own type, whichever thread met it.
            ExceptionDispatchInfo.Capture(errors.InnerExceptions[0]).Throw();
        }
    }

    /// <summary>A fill that is only described reaches over the canvas; a layer without a rectangle has nothing to show even on a canvas of its own.</summary>
    private Bounds GetArea(Layer layer)
    {
        var canvas = new Bounds(0, 0, file.Width, file.Height);
        if (DescribedContent.IsLiveFill(layer)) return CompositorSupport.FindContentReason(layer) is null ? canvas : Bounds.Empty;
        return layer.Bounds.IsEmpty ? Bounds.Empty : options.Canvas ? canvas : layer.Bounds;
    }
}
