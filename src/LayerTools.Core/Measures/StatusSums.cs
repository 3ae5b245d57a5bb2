using LayerTools.Names;

namespace LayerTools.Measures;

/// <summary>Sums up statuses as they come, keeping sums only, so that any number of files can flow through.</summary>
/// <param name="grouping">What to sum up by.</param>
public sealed class StatusSums(StatusGrouping grouping)
{
    /// <summary>The key of layers that lie in no group.</summary>
    public const string Outermost = "(outermost)";

    private readonly Dictionary<string, StatusSum> sums = new(StringComparer.Ordinal);
    private readonly List<(int Order, string Key)> keys = [];

    /// <summary>Takes one status in.</summary>
    public void Add(LayerStatus status)
    {
        if (status is null) throw new ArgumentNullException(nameof(status));
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
            keys.Add((FindOrder(status), key));
        }

        sum.Add(status);
    }

    /// <summary>The sums so far: files and groups in the order they came; left, right, central; marks by their number.</summary>
    public IReadOnlyList<StatusSummary> Summarize() => [.. keys.OrderBy(item => item.Order).Select(item => sums[item.Key].Summarize(item.Key))];

    private int FindOrder(LayerStatus status) => grouping switch
    {
        StatusGrouping.Side => status.Side == Side.None ? int.MaxValue : (int)status.Side,
        StatusGrouping.Mark => (int)status.Mark,
        _ => 0,
    };
}
