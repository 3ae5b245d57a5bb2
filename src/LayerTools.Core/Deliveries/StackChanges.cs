using LayerTools.Measures.Stacking;
using LayerTools.Model;

namespace LayerTools.Deliveries;

/// <summary>Finds the layers that changed their place among those of their group: as few as explain the new order, so that one layer that was moved is one change.</summary>
internal static class StackChanges
{
    /// <summary>The new layers that lie before or behind others now.</summary>
    /// <param name="matches">The layers that are in both files.</param>
    /// <param name="regrouped">The new layers that lie in another group.</param>
    public static HashSet<Layer> Find(IReadOnlyList<LayerMatch> matches, HashSet<Layer> regrouped)
    {
        var restacked = new HashSet<Layer>();
        foreach (var group in matches.Where(match => !regrouped.Contains(match.New)).GroupBy(match => match.New.Parent))
        {
            var inNewOrder = group.OrderBy(match => match.New.LayerNumber).ToList();
            var kept = new HashSet<int>(GroupOrder.FindLongestRun([.. inNewOrder.Select(match => match.Old.LayerNumber)]));
            restacked.UnionWith(inNewOrder.Where((_, i) => !kept.Contains(i)).Select(match => match.New));
        }

        return restacked;
    }
}
