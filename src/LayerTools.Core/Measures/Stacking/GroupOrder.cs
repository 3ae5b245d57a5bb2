using LayerTools.Model;

namespace LayerTools.Measures.Stacking;

/// <summary>
/// The order that the layers of one group should have, and the fewest moves that lead to it. Layers of one zone keep their order. What belongs to no zone stays on what it lies
/// on; what lies behind everything that is known stays at the back, and sketches, guides and adjustments over everything stay at the front. The pieces of a thing that is worn or carried keep their order. The longest run that is in order already stays, and only the others move.
/// </summary>
internal sealed class GroupOrder
{
    private GroupOrder(IReadOnlyList<StackBlock> blocks, IReadOnlyList<StackBlock> sorted, IReadOnlyList<StackBlock> moved)
    {
        Blocks = blocks;
        Sorted = sorted;
        Moved = moved;
    }

    /// <summary>What keeps together, front to back, as it lies.</summary>
    public IReadOnlyList<StackBlock> Blocks { get; }

    /// <summary>The same in order.</summary>
    public IReadOnlyList<StackBlock> Sorted { get; }

    /// <summary>What has to move, front to back as it lies.</summary>
    public IReadOnlyList<StackBlock> Moved { get; }

    /// <summary>All layers of the group in order, front to back.</summary>
    public IEnumerable<Layer> Layers => Sorted.SelectMany(block => block.Layers);

    public static GroupOrder Of(Layer group, StackRanks ranks)
    {
        var blocks = Split(group, ranks);
        var staying = new HashSet<int>(FindLongestRun([.. blocks.Select(block => block.Rank)]));
        return new GroupOrder(blocks, [.. blocks.OrderBy(block => block.Rank)], [.. blocks.Where((_, i) => !staying.Contains(i))]);
    }

    /// <summary>The places of the longest run of numbers that never fall; patience sorting, O(n log n).</summary>
    public static IReadOnlyList<int> FindLongestRun(IReadOnlyList<int> numbers)
    {
        var previous = new int[numbers.Count];
        // ends[k] is the place of the smallest number that a run of k + 1 can end with.
        var ends = new List<int>();
        for (var i = 0; i < numbers.Count; i++)
        {
            var (low, high) = (0, ends.Count);
            while (low < high)
            {
                var middle = (low + high) / 2;
                if (numbers[ends[middle]] <= numbers[i]) low = middle + 1;
                else high = middle;
            }

            previous[i] = low > 0 ? ends[low - 1] : -1;
            if (low == ends.Count) ends.Add(i);
            else ends[low] = i;
        }

        var run = new int[ends.Count];
        for (var (k, at) = (run.Length - 1, ends.Count > 0 ? ends[ends.Count - 1] : -1); k >= 0; k--, at = previous[at]) run[k] = at;
        return run;
    }

    private static List<StackBlock> Split(Layer group, StackRanks ranks)
    {
        var blocks = new List<StackBlock>();
        var waiting = new List<Layer>();
        if (ranks.IsThing(group)) return group.GetChildren() is { Count: > 0 } pieces ? [new StackBlock([.. pieces], pieces[0], StackBlock.Back)] : [];
        foreach (var run in ClippingRun.Split(group.GetChildren()).Reverse())
        {
            var rank = run.Base is null ? null : ranks.RankOf(run.Base);
            if (rank is null && waiting.Count == 0 && blocks.TrueForAll(block => block.Rank == StackBlock.Front) && run.Base is not null && ranks.LiesOverAll(run.Base)) rank = StackBlock.Front;
            waiting.AddRange(run.Layers);
            if (rank is null) continue;
            blocks.Add(new StackBlock([.. waiting], run.Base!, rank.Value));
            waiting.Clear();
        }

        if (waiting.Count > 0) blocks.Add(new StackBlock([.. waiting], waiting[0], StackBlock.Back));
        return blocks;
    }
}
