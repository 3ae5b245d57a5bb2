using LayerTools.Model;

namespace LayerTools.Deliveries;

/// <summary>
/// Finds the layers of an old file again in a new one. Those with the same id, path and packed bytes are certain; all others are judged by id, path, name, content
/// and look together, and of all assignments the one is taken whose evidence is the strongest in sum.
/// </summary>
internal sealed class LayerMatcher
{
    private readonly LayerFile old;
    private readonly LayerFile @new;
    private readonly ContentCache oldContents;
    private readonly ContentCache newContents;
    private readonly StoredContent stored;
    private readonly bool trustsIds;

    public LayerMatcher(ContentCache oldContents, ContentCache newContents, StoredContent stored)
    {
        (old, @new) = (oldContents.File, newContents.File);
        (this.oldContents, this.newContents, this.stored) = (oldContents, newContents, stored);
        trustsIds = TellWhetherIdsAgree();
    }

    /// <summary>The layers and groups that are in both files, in the old file's order.</summary>
    public List<LayerMatch> Match()
    {
        var matches = MatchCertain();
        var (oldRest, newRest) = (Rest(old, matches, match => match.Old, isGroup: false), Rest(@new, matches, match => match.New, isGroup: false));
        if (oldRest.Count > 0 && newRest.Count > 0)
        {
            oldContents.Read(oldRest, withLooks: true);
            newContents.Read(newRest, withLooks: true);
            matches.AddRange(Assign(oldRest, newRest, (one, two) => MatchScore.OfLayers(one, oldContents[one], two, newContents[two], trustsIds)));
        }

        matches.AddRange(MatchGroups(matches));
        return [.. matches.OrderBy(match => match.Old.LayerNumber)];
    }

    private List<LayerMatch> MatchCertain()
    {
        var matches = new List<LayerMatch>();
        var byPath = FindUniquePaths(@new);
        foreach (var pair in FindUniquePaths(old).OrderBy(pair => pair.Value.LayerNumber))
        {
            if (!byPath.TryGetValue(pair.Key, out var found) || (trustsIds && pair.Value.Id != found.Id)) continue;
            if (stored.AreSame(pair.Value, found)) matches.Add(new LayerMatch(pair.Value, found, Tell(pair.Value, found)));
        }

        return matches;
    }

    private static Dictionary<string, Layer> FindUniquePaths(LayerFile file) => file.GetLayers().Where(layer => !layer.IsGroup)
        .GroupBy(layer => layer.LayerPath, StringComparer.Ordinal).Where(group => group.Count() == 1).ToDictionary(group => group.Key, group => group.First(), StringComparer.Ordinal);

    private List<LayerMatch> MatchGroups(List<LayerMatch> leaves)
    {
        var partners = leaves.ToDictionary(match => match.Old, match => match.New);
        var (oldGroups, newGroups) = (Rest(old, [], match => match.Old, isGroup: true), Rest(@new, [], match => match.New, isGroup: true));
        var newMembers = newGroups.ToDictionary(group => group, group => new HashSet<Layer>(group.GetLayers().Where(layer => !layer.IsGroup)));
        var oldMembers = oldGroups.ToDictionary(group => group, group => group.GetLayers().Where(layer => !layer.IsGroup).ToList());
        return Assign(oldGroups, newGroups, (one, two) => MatchScore.OfGroups(one, two, Shared(oldMembers[one], newMembers[two]), trustsIds));

        double Shared(List<Layer> olds, HashSet<Layer> news)
        {
            var common = olds.Count(layer => partners.TryGetValue(layer, out var partner) && news.Contains(partner));
            if (common == 0) return 0;

            // A group that lost or gained layers is still the same; of groups in each other, those of like size belong together.
            var ofSmaller = (double)common / Math.Min(olds.Count, news.Count);
            var ofBoth = (double)common / (olds.Count + news.Count - common);
            return (ofSmaller + ofBoth) / 2;
        }
    }

    private static List<Layer> Rest(LayerFile file, List<LayerMatch> matches, Func<LayerMatch, Layer> side, bool isGroup)
    {
        var matched = new HashSet<Layer>(matches.Select(side));
        return [.. file.GetLayers().Where(layer => layer.IsGroup == isGroup && !matched.Contains(layer))];
    }

    private List<LayerMatch> Assign(List<Layer> olds, List<Layer> news, Func<Layer, Layer, double> judge)
    {
        if (olds.Count == 0 || news.Count == 0) return [];

        // A column of its own for each row lets a layer stay without a partner where none is good enough.
        var costs = new double[olds.Count, news.Count + olds.Count];
        for (var row = 0; row < olds.Count; row++)
        {
            for (var column = 0; column < news.Count; column++)
            {
                // Among equals, those that lie at about the same depth belong together.
                var distance = Math.Abs((double)olds[row].LayerNumber / old.LayerCount - ((double)news[column].LayerNumber / @new.LayerCount));
                costs[row, column] = Math.Min(0, MatchScore.Least - judge(olds[row], news[column])) + (distance * 1e-6);
            }

            for (var column = news.Count; column < costs.GetLength(1); column++) costs[row, column] = 0;
        }

        var matches = new List<LayerMatch>();
        var assigned = LeastCost.Assign(costs);
        for (var row = 0; row < olds.Count; row++)
        {
            if (assigned[row] < news.Count && costs[row, assigned[row]] < 0) matches.Add(new LayerMatch(olds[row], news[assigned[row]], Tell(olds[row], news[assigned[row]])));
        }

        return matches;
    }

    private MatchEvidence Tell(Layer one, Layer two)
    {
        if (trustsIds && one.Id is not null && one.Id == two.Id) return MatchEvidence.Id;
        if (one.LayerPath == two.LayerPath) return MatchEvidence.Path;
        return !one.IsGroup && oldContents[one] is { IsEmpty: false } content && content.Pixels == newContents[two].Pixels ? MatchEvidence.Fingerprint : MatchEvidence.Likeness;
    }

    /// <summary>Programs that make a file anew may give ids anew: then layers with one id have nothing else in common.</summary>
    private bool TellWhetherIdsAgree()
    {
        var byId = @new.GetLayers().Where(layer => layer.Id is not null).GroupBy(layer => layer.Id!.Value).ToDictionary(group => group.Key, group => group.First());
        var (common, agreeing) = (0, 0);
        foreach (var layer in old.GetLayers())
        {
            if (layer.Id is not { } id || !byId.TryGetValue(id, out var other)) continue;
            common++;
            if (layer.Name == other.Name || (!layer.IsGroup && !layer.Bounds.IsEmpty && stored.AreSame(layer, other))) agreeing++;
        }

        return 2 * agreeing >= common;
    }
}
