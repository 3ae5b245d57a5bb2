using System.Collections.Concurrent;
using System.Runtime.ExceptionServices;
using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Model;
using LayerTools.Pixels;

namespace LayerTools.Measures.Survey;

/// <summary>What the pixels of all parts of a file say; each is unpacked once.</summary>
public sealed class FigureSurvey
{
    private readonly Dictionary<Layer, PartSurvey> byLayer;

    private FigureSurvey(IReadOnlyList<PartSurvey> parts)
    {
        Parts = parts;
        byLayer = parts.ToDictionary(part => part.Layer);
    }

    /// <summary>All layers that are neither groups nor adjustments, front to back, sketches and the like included (see <see cref="PartSurvey.Role"/>).</summary>
    public IReadOnlyList<PartSurvey> Parts { get; }

    /// <summary>Unpacks the parts of a file, within the usual limits.</summary>
    /// <inheritdoc cref="Take(LayerFile, ReadLimits, CancellationToken)"/>
    public static FigureSurvey Take(LayerFile file, CancellationToken cancellation = default) => Take(file, ReadLimits.Default, cancellation);

    /// <summary>
    /// Unpacks the parts of a file, several at a time; what is found does not depend on how many. Holds one row of each part that is being read and a bit for each pixel of the
    /// rectangles that the parts cover: 100 parts that all fill a canvas of 5000 × 6000 px take 375 MB, those of a figure a tenth of that.
    /// </summary>
    /// <param name="file">The file; it is not changed. Pending edits count.</param>
    /// <param name="limits">How much the covered rectangles may take together (<see cref="ReadLimits.MemoryMegabytes"/>).</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="LayeredFileException">A channel is damaged, the file changed on disk, its colours cannot be drawn, or a limit is passed. Of several such layers the front-most is told.</exception>
    public static FigureSurvey Take(LayerFile file, ReadLimits limits, CancellationToken cancellation = default)
    {
        var layers = file.GetLayers().Where(layer => layer.Kind is not (LayerKind.Group or LayerKind.Adjustment)).ToList();
        var parts = new PartSurvey[layers.Count];
        var errors = new LayeredFileException?[layers.Count];
        var firstError = layers.Count;
        var roles = new StatusOptions();
        var memory = new SurveyMemory(file, limits);
        var scanners = new ConcurrentBag<PartScanner>();
        using var reader = new PixelReader(file, limits);
        var alpha = new PartAlpha(file, reader, cancellation);

        // The largest first, so that no processor is left with one at the end.
        var order = Enumerable.Range(0, layers.Count).OrderByDescending(index => layers[index].Bounds.Area).ToList();
        var parallel = new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount, CancellationToken = cancellation };
        Parallel.ForEach(Partitioner.Create(order, EnumerablePartitionerOptions.NoBuffering), parallel, Scan);
        if (Array.Find(errors, error => error is not null) is { } first) ExceptionDispatchInfo.Capture(first).Throw();
        return new FigureSurvey(parts);

        void Scan(int index)
        {
            // Layers in front of one that cannot be read go on, so that it does not depend on chance which error is told.
            if (index > Volatile.Read(ref firstError)) return;
            var scanner = scanners.TryTake(out var used) ? used : new PartScanner(new Bounds(0, 0, file.Width, file.Height), memory);
            try
            {
                scanner.Restart();
                alpha.Read(layers[index], scanner);
                parts[index] = scanner.Complete(layers[index], roles.FindRole(layers[index]));
            }
            catch (LayeredFileException error)
            {
                errors[index] = error;
                for (var known = Volatile.Read(ref firstError); index < known; known = Volatile.Read(ref firstError)) Interlocked.CompareExchange(ref firstError, index, known);
            }

            scanners.Add(scanner);
        }
    }

    /// <summary>What a layer's pixels say; null for groups, adjustments and layers of other files.</summary>
    public PartSurvey? Find(Layer layer) => byLayer.TryGetValue(layer, out var part) ? part : null;
}
