namespace LayerTools.Profiles.Learning;

/// <summary>Counts how often things were seen.</summary>
internal sealed class Tally<T>
    where T : notnull
{
    private readonly Dictionary<T, int> counts = [];

    public int Total { get; private set; }

    public IEnumerable<KeyValuePair<T, int>> Counts => counts;

    public void Add(T item)
    {
        counts[item] = Of(item) + 1;
        Total++;
    }

    public int Of(T item) => counts.TryGetValue(item, out var count) ? count : 0;

    /// <summary>What was seen most often, the first seen where that is a tie.</summary>
    /// <param name="most">The thing.</param>
    /// <param name="isClear">Whether it was seen at least four times in five.</param>
    /// <returns>False if nothing was seen.</returns>
    public bool TryFindMost(out T most, out bool isClear)
    {
        (most, isClear) = (default!, false);
        if (Total == 0) return false;
        most = counts.OrderByDescending(item => item.Value).First().Key;
        isClear = 5 * Of(most) >= 4 * Total;
        return true;
    }
}
