using LayerTools.Model;

namespace LayerTools.Deliveries;

/// <summary>
/// The assignment of old layers to new ones whose evidence is the strongest in sum. Of each old layer at most <see cref="MostCandidates"/> new ones are looked at, the most
/// likely ones, so that memory goes with the number of layers also where thousands are alike.
/// </summary>
internal sealed class MatchAssignment
{
    public const int MostCandidates = 64;

    /// <summary>Among equals, those that lie at about the same depth belong together.</summary>
    private const double DepthWeight = 1e-6;

    private readonly IReadOnlyList<LayerTraits> olds;
    private readonly IReadOnlyList<LayerTraits> news;
    private readonly CostedPair[][] pairs;
    private readonly int[] columnOf;
    private readonly int[] rowOf;

    /// <param name="olds">Layers of the old file.</param>
    /// <param name="news">Layers of the new one.</param>
    /// <param name="judge">How strong the evidence is that two are one.</param>
    /// <param name="cancellation">Stops the work.</param>
    public MatchAssignment(IReadOnlyList<LayerTraits> olds, IReadOnlyList<LayerTraits> news, Func<LayerTraits, LayerTraits, double> judge, CancellationToken cancellation)
    {
        (this.olds, this.news) = (olds, news);
        pairs = ParallelWork.Select(olds, old => FindCandidates(old, judge, cancellation), cancellation);
        columnOf = LeastCost.Assign(pairs, news.Count, cancellation);
        rowOf = new int[news.Count];
        rowOf.AsSpan().Fill(-1);
        for (var row = 0; row < columnOf.Length; row++)
        {
            if (columnOf[row] >= 0) rowOf[columnOf[row]] = row;
        }
    }

    /// <summary>The pairs that belong together, each with a layer that would fit one of both as well.</summary>
    public IEnumerable<(LayerTraits Old, LayerTraits New, Layer? Rival)> Find()
    {
        var rivals = FindRivals();
        for (var row = 0; row < columnOf.Length; row++)
        {
            if (columnOf[row] >= 0) yield return (olds[row], news[columnOf[row]], rivals[row]);
        }
    }

    private CostedPair[] FindCandidates(LayerTraits old, Func<LayerTraits, LayerTraits, double> judge, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        var found = new List<CostedPair>();
        for (var column = 0; column < news.Count; column++)
        {
            var cost = MatchScore.Least - judge(old, news[column]);
            if (cost >= 0) continue;
            var distance = Math.Abs(Depth(old.Layer) - Depth(news[column].Layer));
            found.Add(new CostedPair(column, cost + (distance * DepthWeight)));
        }

        return found.Count <= MostCandidates ? [.. found] : [.. found.OrderBy(pair => pair.Cost).Take(MostCandidates)];
    }

    private static double Depth(Layer layer) => (double)layer.LayerNumber / layer.File!.LayerCount;

    /// <summary>For each row a layer whose exchange for one of the pair leaves the evidence as strong in sum.</summary>
    private Layer?[] FindRivals()
    {
        var rivals = new Layer?[olds.Count];
        var costs = new Dictionary<(int Row, int Column), double>();
        for (var row = 0; row < pairs.Length; row++)
        {
            foreach (var pair in pairs[row]) costs.Add((row, pair.Column), pair.Cost);
        }

        foreach (var ((row, column), cost) in costs.Select(item => (item.Key, item.Value)))
        {
            if (columnOf[row] == column) continue;
            var (own, taker) = (columnOf[row], rowOf[column]);
            var now = Cost(row, own) + Cost(taker, column);
            if (cost + Cost(taker, own) - now >= MatchScore.Undecided) continue;
            if (taker >= 0) rivals[taker] ??= olds[row].Layer;
            if (own >= 0) rivals[row] ??= taker >= 0 ? olds[taker].Layer : news[column].Layer;
        }

        return rivals;

        double Cost(int row, int column) => row >= 0 && column >= 0 && costs.TryGetValue((row, column), out var cost) ? cost : 0;
    }
}
