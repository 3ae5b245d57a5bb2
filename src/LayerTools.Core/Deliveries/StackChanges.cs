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
            var kept = new HashSet<int>(LongestRun([.. inNewOrder.Select(match => match.Old.LayerNumber)]));
            restacked.UnionWith(inNewOrder.Where(match => !kept.Contains(match.Old.LayerNumber)).Select(match => match.New));
        }

        return restacked;
    }

    /// <summary>The longest increasing run of different numbers, by patience sorting in n·log n steps.</summary>
    private static IEnumerable<int> LongestRun(IReadOnlyList<int> numbers)
    {
        var tails = new List<int>();
        var before = new int[numbers.Count];
        for (var i = 0; i < numbers.Count; i++)
        {
            var (low, high) = (0, tails.Count);
            while (low < high)
            {
                var middle = (low + high) / 2;
                if (numbers[tails[middle]] < numbers[i]) low = middle + 1;
                else high = middle;
            }

            before[i] = low == 0 ? -1 : tails[low - 1];
            if (low == tails.Count) tails.Add(i);
            else tails[low] = i;
        }

        for (var i = tails.Count == 0 ? -1 : tails[tails.Count - 1]; i >= 0; i = before[i]) yield return numbers[i];
    }
}
