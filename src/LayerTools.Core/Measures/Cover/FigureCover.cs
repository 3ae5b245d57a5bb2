using LayerTools.Errors;
using LayerTools.Measures.Survey;
using LayerTools.Model;

namespace LayerTools.Measures.Cover;

/// <summary>Which parts of a figure cover which, and how far parts are painted on underneath their neighbours.</summary>
public sealed class FigureCover
{
    private FigureCover(LayerFile file, IReadOnlyList<CoverPart> stack, IReadOnlyList<PartCover> parts, IReadOnlyList<SeamCover> seams) =>
        (File, Stack, Parts, Seams) = (file, stack, parts, seams);

    /// <summary>The parts, front to back.</summary>
    public IReadOnlyList<PartCover> Parts { get; }

    /// <summary>Each part with each neighbour that covers any of it or touches what is seen of it, front to back, the neighbours likewise.</summary>
    public IReadOnlyList<SeamCover> Seams { get; }

    internal LayerFile File { get; }

    /// <summary>All parts that can cover, front to back, measured or not.</summary>
    internal IReadOnlyList<CoverPart> Stack { get; }

    /// <summary>Measures the parts of a file.</summary>
    /// <param name="file">The file; it is not changed.</param>
    /// <param name="layers">The layers to measure; groups stand for the parts in them, clipped layers for their base. All layers of the file cover, whichever are chosen.</param>
    /// <param name="options">How to measure.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="LayeredFileException">A channel is damaged, the file changed on disk, its colours cannot be drawn, or an option is out of range.</exception>
    public static FigureCover Measure(LayerFile file, IEnumerable<Layer> layers, CoverOptions? options = null, CancellationToken cancellation = default)
    {
        _ = (options ?? new CoverOptions()).WantedDepthFor(file);
        return Measure(file, FigureSurvey.Take(file, cancellation), layers, options, cancellation);
    }

    /// <inheritdoc cref="Measure(LayerFile, IEnumerable{Layer}, CoverOptions?, CancellationToken)"/>
    internal static FigureCover Measure(LayerFile file, FigureSurvey survey, IEnumerable<Layer> layers, CoverOptions? options = null, CancellationToken cancellation = default)
    {
        var chosen = new HashSet<Layer>(layers.SelectMany(layer => layer.IsGroup ? layer.GetLayers() : [layer]).Select(CoverPart.BaseOf));
        return Measure(file, CoverPart.Of(survey, (options ?? new CoverOptions()).IncludeHidden), part => chosen.Contains(part.Layer), options ?? new CoverOptions(), cancellation);
    }

    /// <summary>Measures parts that are given, front to back.</summary>
    internal static FigureCover Measure(LayerFile file, IReadOnlyList<CoverPart> stack, Func<CoverPart, bool> isChosen, CoverOptions options, CancellationToken cancellation = default)
    {
        var wanted = options.WantedDepthFor(file);
        var canvas = new Bounds(0, 0, file.Width, file.Height);
        var chosen = Enumerable.Range(0, stack.Count).Where(i => isChosen(stack[i])).ToList();
        var results = new PartResult?[chosen.Count];
        var parallel = new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount, CancellationToken = cancellation };
        Parallel.For(
            0,
            chosen.Count,
            parallel,
            () => new PartProbe(file, stack, canvas, wanted, options.MaximumDepth),
            (i, _, probe) =>
            {
                results[i] = probe.Measure(chosen[i], cancellation);
                return probe;
            },
            _ => { });
        return new FigureCover(file, stack, results.Select(result => result!.Total).ToList(), results.SelectMany(result => result!.Seams).ToList());
    }
}
