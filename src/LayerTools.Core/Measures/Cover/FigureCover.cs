using LayerTools.Errors;
using LayerTools.Measures.Survey;
using LayerTools.Model;

namespace LayerTools.Measures.Cover;

/// <summary>Which parts of a figure cover which, and how far parts are painted on underneath their neighbours.</summary>
public sealed class FigureCover
{
    /// <summary>Most neighbours that all parts together may have: as many as 1,400 parts of which each covers all others. Records of more would take gigabytes.</summary>
    private const int MostSeams = 1_000_000;

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
    /// <exception cref="LayeredFileException">A channel is damaged, the file changed on disk, its colours cannot be drawn, an option is out of range, or there are too many neighbours.</exception>
    public static FigureCover Measure(LayerFile file, IEnumerable<Layer> layers, CoverOptions? options = null, CancellationToken cancellation = default)
    {
        _ = (options ?? new CoverOptions()).WantedDepthFor(file);
        return Measure(file, FigureSurvey.Take(file, cancellation), layers, options, cancellation);
    }

    /// <inheritdoc cref="Measure(LayerFile, IEnumerable{Layer}, CoverOptions?, CancellationToken)"/>
    internal static FigureCover Measure(LayerFile file, FigureSurvey survey, IEnumerable<Layer> layers, CoverOptions? options = null, CancellationToken cancellation = default)
    {
        var chosen = new HashSet<Layer>(layers.SelectMany(layer => layer.IsGroup ? layer.GetLayers() : [layer]).Select(CoverPart.BaseOf));
        return Measure(file, CoverPart.Of(survey, (options ?? new CoverOptions()).IncludeHidden), part => chosen.Contains(part.Layer), options ?? new CoverOptions(), cancellation: cancellation);
    }

    /// <summary>Measures parts that are given, front to back.</summary>
    /// <param name="file">The file.</param>
    /// <param name="stack">The parts.</param>
    /// <param name="isChosen">Which of them to measure.</param>
    /// <param name="options">How to measure.</param>
    /// <param name="isWanted">Which <see cref="Seams"/> to keep; null for all.</param>
    /// <param name="cancellation">Stops the work.</param>
    internal static FigureCover Measure(
        LayerFile file, IReadOnlyList<CoverPart> stack, Func<CoverPart, bool> isChosen, CoverOptions options, Func<SeamCover, bool>? isWanted = null, CancellationToken cancellation = default)
    {
        var wanted = options.WantedDepthFor(file);
        var canvas = new Bounds(0, 0, file.Width, file.Height);
        var chosen = Enumerable.Range(0, stack.Count).Where(i => isChosen(stack[i])).ToList();
        var results = new PartResult?[chosen.Count];
        var seams = 0;
        var parallel = new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount, CancellationToken = cancellation };
        Parallel.For(
            0,
            chosen.Count,
            parallel,
            () => new PartProbe(file, stack, canvas, wanted, options.MaximumDepth),
            (i, _, probe) =>
            {
                if (Volatile.Read(ref seams) > MostSeams) return probe;
                var result = probe.Measure(chosen[i], cancellation);
                results[i] = isWanted is null ? result : result with { Seams = [.. result.Seams.Where(isWanted)] };
                Interlocked.Add(ref seams, results[i]!.Seams.Count);
                return probe;
            },
            _ => { });
        if (seams > MostSeams)
        {
            throw new LayeredFileException(LayeredFileErrorKind.LimitExceeded, file.Path, "layers", -1,
                FormattableString.Invariant($"More than {MostSeams} times a part covers another one."), "Measure some of the layers at a time.");
        }

        return new FigureCover(file, stack, results.Select(result => result!.Total).ToList(), results.SelectMany(result => result!.Seams).ToList());
    }
}
