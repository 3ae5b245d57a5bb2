using System.Runtime.ExceptionServices;
using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Pixels.Compositing;

namespace LayerTools.Measures.Symmetry;

/// <summary>
/// Measures how well the sides of a figure agree. Each part is unpacked once. Memory: 7 bytes for each pixel of the figure's canvas or of the two parts that are being
/// compared; up to four pairs are compared at a time, of pairs of more than <see cref="LargeMegapixels"/> megapixels one.
/// </summary>
/// <param name="options">How it is measured; null for the usual.</param>
public sealed class SymmetryReader(SymmetryOptions? options = null)
{
    /// <summary>Pairs of more pixels, in millions, are not compared while others are.</summary>
    public const int LargeMegapixels = 8;

    private const int MostAtOnce = 4;

    private readonly SymmetryOptions options = options ?? new SymmetryOptions();

    /// <summary>
    /// Measures the whole figure and all its parts, or chosen parts. Parts are layers with pixels of their own that are no backdrop, sketch or guide; what lies in a chosen
    /// group counts as chosen, and either of a pair stands for both.
    /// </summary>
    /// <param name="file">The file. Pending edits are seen.</param>
    /// <param name="layers">The chosen layers; null for the figure and all parts.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The figure first, if it was asked for, then pairs and central parts front to back.</returns>
    /// <exception cref="LayeredFileException">A channel is damaged, something is too large, the file changed on disk, or its colours cannot be drawn.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public IReadOnlyList<LayerSymmetry> Read(LayerFile file, IReadOnlyList<Layer>? layers = null, CancellationToken cancellation = default)
    {
        var roles = new PartRoles(file);
        var chosen = Selection.InStackOrder(file, (layers ?? file.GetChildren()).SelectMany(layer => new[] { layer }.Concat(layer.GetLayers())));
        var items = SymmetryItem.Arrange(file, chosen.Where(roles.IsPart)).ToList();
        if (layers is null) items.Insert(0, SymmetryItem.Figure);
        return Measure(file, items, roles, cancellation);
    }

    /// <summary>Measures the whole figure alone.</summary>
    /// <inheritdoc cref="Read"/>
    internal LayerSymmetry ReadFigure(LayerFile file, CancellationToken cancellation) => Measure(file, [SymmetryItem.Figure], new PartRoles(file), cancellation)[0];

    private LayerSymmetry[] Measure(LayerFile file, List<SymmetryItem> items, PartRoles roles, CancellationToken cancellation)
    {
        CompositorSupport.EnsureColors(file);
        using var painter = new PartPainter(file, options.Limits, cancellation);
        var results = new LayerSymmetry[items.Count];
        var done = 0;
        var threads = Math.Min(options.Parallelism ?? Environment.ProcessorCount, MostAtOnce);
        var bySize = Enumerable.Range(0, items.Count).Select(index => (Index: index, Area: FindArea(items[index]))).OrderByDescending(item => item.Area).ToList();
        foreach (var (index, _) in bySize.Where(item => item.Area > LargeMegapixels * 1_000_000L)) MeasureOne(index);
        try
        {
            Parallel.ForEach(bySize.Where(item => item.Area <= LargeMegapixels * 1_000_000L), new ParallelOptions { MaxDegreeOfParallelism = threads, CancellationToken = cancellation }, item => MeasureOne(item.Index));
        }
        catch (AggregateException errors)
        {
            // An error keeps its own type, whichever thread met it.
            ExceptionDispatchInfo.Capture(errors.InnerExceptions[0]).Throw();
        }

        return results;

        void MeasureOne(int index)
        {
            cancellation.ThrowIfCancellationRequested();
            results[index] = new SymmetryMeasurement(file, painter, roles, cancellation).Measure(items[index]);
            options.Progress?.Invoke(Interlocked.Increment(ref done), items.Count);
        }

        long FindArea(SymmetryItem item) => item.Kind == SymmetryKind.Figure
            ? (long)file.Width * file.Height
            : painter.FindArea(item.Part!).Area + (item.Opposite is { } opposite ? painter.FindArea(opposite).Area : 0);
    }
}
