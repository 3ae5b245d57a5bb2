using LayerTools.Model;

namespace LayerTools.Deliveries;

/// <summary>
/// Finds the layers of an old file again in a new one. Those with the same path, and the same id or packed bytes, are certain; all others are judged by id, path, name, content
/// and look together, and of all assignments the one is taken whose evidence is the strongest in sum.
/// </summary>
internal sealed class LayerMatcher
{
    private readonly LayerFile old;
    private readonly LayerFile @new;
    private readonly ContentCache oldContents;
    private readonly ContentCache newContents;
    private readonly StoredContent stored;
    private readonly CancellationToken cancellation;
    private readonly bool trustsIds;

    public LayerMatcher(ContentCache oldContents, ContentCache newContents, StoredContent stored, CancellationToken cancellation)
    {
        (old, @new) = (oldContents.File, newContents.File);
        (this.oldContents, this.newContents, this.stored, this.cancellation) = (oldContents, newContents, stored, cancellation);
        trustsIds = TellWhetherIdsAgree();
    }

    /// <summary>The layers and groups that are in both files, in the old file's order.</summary>
    public List<LayerMatch> Match()
    {
        var matches = MatchCertain();
        var (oldRest, newRest) = (Rest(old, matches, match => match.Old), Rest(@new, matches, match => match.New));
        if (oldRest.Count > 0 && newRest.Count > 0)
        {
            oldContents.Read(oldRest, withLooks: true);
            newContents.Read(newRest, withLooks: true);
            var assignment = new MatchAssignment(Describe(oldRest, oldContents), Describe(newRest, newContents), MatchScore.OfLayers, cancellation);
            matches.AddRange(assignment.Find().Select(pair => Tell(pair.Old, pair.New, MatchScore.Likeness(pair.Old.Content!, pair.New.Content!), pair.Rival)));
        }

        matches.AddRange(MatchGroups(matches));
        return [.. matches.OrderBy(match => match.Old.LayerNumber)];
    }

    private List<LayerMatch> MatchCertain()
    {
        var byPath = FindUniquePaths(@new);
        var pairs = FindUniquePaths(old).Where(pair => byPath.TryGetValue(pair.Key, out var found) && (!trustsIds || pair.Value.Id == found.Id))
            .Select(pair => (Old: pair.Value, New: byPath[pair.Key])).OrderBy(pair => pair.Old.LayerNumber).ToList();
        var areCertain = ParallelWork.Select(pairs, pair => stored.AreSame(pair.Old, pair.New) || HasSameId(pair.Old, pair.New), cancellation);
        return [.. pairs.Where((_, i) => areCertain[i]).Select(pair => new LayerMatch(pair.Old, pair.New, HasSameId(pair.Old, pair.New) ? MatchEvidence.Id : MatchEvidence.Path))];

        bool HasSameId(Layer one, Layer two) => trustsIds && one.Id is not null && one.Id == two.Id;
    }

    private static Dictionary<string, Layer> FindUniquePaths(LayerFile file) => file.GetLayers().Where(layer => !layer.IsGroup)
        .GroupBy(layer => layer.LayerPath, StringComparer.Ordinal).Where(group => group.Count() == 1).ToDictionary(group => group.Key, group => group.First(), StringComparer.Ordinal);

    private IEnumerable<LayerMatch> MatchGroups(List<LayerMatch> leaves)
    {
        var (oldSizes, newSizes) = (CountLeaves(old), CountLeaves(@new));
        var common = new Dictionary<(Layer, Layer), int>();
        foreach (var match in leaves)
        {
            foreach (var one in GroupsAround(match.Old))
            {
                foreach (var two in GroupsAround(match.New)) common[(one, two)] = common.TryGetValue((one, two), out var count) ? count + 1 : 1;
            }
        }

        var assignment = new MatchAssignment(
            Describe([.. old.GetLayers().Where(layer => layer.IsGroup)], null),
            Describe([.. @new.GetLayers().Where(layer => layer.IsGroup)], null),
            (one, two) => MatchScore.OfGroups(one, two, Shared(one.Layer, two.Layer)),
            cancellation);
        return assignment.Find().Select(pair => Tell(pair.Old, pair.New, Shared(pair.Old.Layer, pair.New.Layer), pair.Rival));

        double Shared(Layer one, Layer two)
        {
            if (!common.TryGetValue((one, two), out var count)) return 0;

            // A group that lost or gained layers is still the same; of groups in each other, those of like size belong together.
            var ofSmaller = (double)count / Math.Min(oldSizes[one], newSizes[two]);
            var ofBoth = (double)count / (oldSizes[one] + newSizes[two] - count);
            return (ofSmaller + ofBoth) / 2;
        }
    }

    private static Dictionary<Layer, int> CountLeaves(LayerFile file) =>
        file.GetLayers().Where(layer => !layer.IsGroup).SelectMany(GroupsAround).GroupBy(group => group).ToDictionary(group => group.Key, group => group.Count());

    private static IEnumerable<Layer> GroupsAround(Layer layer)
    {
        for (var group = layer.GetParent(); group is not null; group = group.GetParent()) yield return group;
    }

    private static List<Layer> Rest(LayerFile file, List<LayerMatch> matches, Func<LayerMatch, Layer> side)
    {
        var matched = new HashSet<Layer>(matches.Select(side));
        return [.. file.GetLayers().Where(layer => !layer.IsGroup && !matched.Contains(layer))];
    }

    private List<LayerTraits> Describe(IReadOnlyList<Layer> layers, ContentCache? contents) =>
        [.. layers.Select(layer => new LayerTraits(layer, trustsIds ? layer.Id : null, layer.LayerPath, contents?[layer]))];

    private static LayerMatch Tell(LayerTraits one, LayerTraits two, double likeness, Layer? rival)
    {
        if (one.Id is not null && one.Id == two.Id) return new LayerMatch(one.Layer, two.Layer, MatchEvidence.Id, null, rival);
        if (one.Path == two.Path) return new LayerMatch(one.Layer, two.Layer, MatchEvidence.Path, null, rival);
        var isSame = one.Content is { IsEmpty: false } content && content.Pixels == two.Content!.Pixels;
        return isSame ? new LayerMatch(one.Layer, two.Layer, MatchEvidence.Fingerprint, null, rival) : new LayerMatch(one.Layer, two.Layer, MatchEvidence.Likeness, likeness, rival);
    }

    /// <summary>Programs that make a file anew may give ids anew: then layers with one id have nothing else in common.</summary>
    private bool TellWhetherIdsAgree()
    {
        var byId = @new.GetLayers().Where(layer => layer.Id is not null).GroupBy(layer => layer.Id!.Value).ToDictionary(group => group.Key, group => group.First());
        var (common, agreeing) = (0, 0);
        foreach (var layer in old.GetLayers())
        {
            if (layer.Id is not { } id || !byId.TryGetValue(id, out var other)) continue;
            cancellation.ThrowIfCancellationRequested();
            common++;
            if (layer.Name == other.Name || (!layer.IsGroup && !layer.Bounds.IsEmpty && stored.AreSame(layer, other))) agreeing++;
        }

        return 2 * agreeing >= common;
    }
}
