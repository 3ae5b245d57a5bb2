using LayerTools.Names;

namespace LayerTools.Measures;

/// <summary>Sums up statuses as they come, keeping sums only, so that any number of files can flow through.</summary>
/// <param name="grouping">What to sum up by.</param>
public sealed class StatusSums(StatusGrouping grouping)
{
    /// <summary>The key of layers that lie in no group.</summary>
    public const string Outermost = "(outermost)";

    private readonly StatusSum all = new();
    private readonly HashSet<string> files = new(StringComparer.Ordinal);
    private readonly Dictionary<string, StatusSum> sums = new(StringComparer.Ordinal);
    private readonly List<(int Order, string Key)> keys = [];
    private readonly HashSet<string> known = new(StringComparer.Ordinal);

    /// <summary>How many files the statuses came from.</summary>
    public int FileCount => files.Count;

    /// <summary>Takes one status in.</summary>
    public void Add(LayerStatus status)
    {
        if (status is null) throw new ArgumentNullException(nameof(status));
        all.Add(status);
        files.Add(status.FilePath);
        var key = grouping switch
        {
            StatusGrouping.File => status.FilePath,
            StatusGrouping.Group => status.Group.Length == 0 ? Outermost : status.Group,
            StatusGrouping.Side => status.Side.ToString(),
            _ => status.Mark.ToString(),
        };
        if (!sums.TryGetValue(key, out var sum))
        {
            sums.Add(key, sum = new StatusSum());
            if (grouping == StatusGrouping.Group) AddGroupsAround(key);
            AddKey(FindOrder(status), key);
        }

        sum.Add(status);
    }

    /// <summary>The sums so far: files in the order they came; groups likewise, each before the groups in it; left, right, central; marks by their number.</summary>
    public IReadOnlyList<StatusSummary> Summarize() => [.. keys.OrderBy(item => item.Order).Where(item => sums.ContainsKey(item.Key)).Select(item => sums[item.Key].Summarize(item.Key))];

    /// <summary>One sum of everything.</summary>
    public StatusSummary SummarizeAll() => all.Summarize("(all)");

    /// <summary>Keeps a place in front of the group for those around it, since their own layers may come later.</summary>
    private void AddGroupsAround(string path)
    {
        for (var end = path.IndexOf('/'); end >= 0; end = path.IndexOf('/', end + 1)) AddKey(0, path.Substring(0, end));
    }

    private void AddKey(int order, string key)
    {
        if (known.Add(key)) keys.Add((order, key));
    }

    private int FindOrder(LayerStatus status) => grouping switch
    {
        StatusGrouping.Side => status.Side == Side.None ? int.MaxValue : (int)status.Side,
        StatusGrouping.Mark => (int)status.Mark,
        _ => 0,
    };
}
