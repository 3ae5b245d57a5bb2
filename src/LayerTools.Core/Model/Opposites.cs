using LayerTools.Names;

namespace LayerTools.Model;

/// <summary>
/// Finds the layer on the other side for each sided layer of a file, as the tree stood when this was made.
/// It is the one that has the swapped name and lies in the same groups, where each sided group may be the same or its opposite.
/// </summary>
internal sealed class Opposites
{
    private readonly Dictionary<string, List<Layer>> byKey = new(StringComparer.OrdinalIgnoreCase);

    public Opposites(LayerFile file)
    {
        foreach (var layer in file.GetLayers())
        {
            var key = CreateKey(layer.Parent, layer.Name);
            if (!byKey.TryGetValue(key, out var layers)) byKey.Add(key, layers = []);
            layers.Add(layer);
        }
    }

    /// <summary>The side a layer lies on: the one its name says, else the one the nearest group around it says.</summary>
    public static Side SideOf(Layer layer)
    {
        var named = layer;
        while (named is { Side: Side.None, Parent: { IsRoot: false } parent }) named = parent;
        return named.Side;
    }

    /// <summary>The layer's opposite; null if the layer's name says no side or its opposite is nowhere in the file.</summary>
    public Layer? Find(Layer layer) => layer.Side == Side.None ? null : Look(layer, other => true);

    /// <summary>The same, also for layers that only lie in a sided group, as <c>Arm L/Hand</c> does: their opposite is the layer of the same name in the opposite group.</summary>
    public Layer? FindAcross(Layer layer) => layer.Side != Side.None ? Find(layer)
        : SideOf(layer) is not Side.None and var side ? Look(layer, other => SideOf(other) is not Side.None and var otherSide && otherSide != side)
        : null;

    private Layer? Look(Layer layer, Func<Layer, bool> isCandidate)
    {
        if (!byKey.TryGetValue(CreateKey(layer.Parent, SideName.Swap(layer.Name)), out var found)) return null;
        var nearest = found.Where(isCandidate)
            .OrderByDescending(other => CountSwappedGroups(layer, other)).ThenByDescending(other => other.Parent == layer.Parent).FirstOrDefault()?.Parent;
        if (nearest is null) return null;
        var there = found.Where(other => other.Parent == nearest).ToList();

        // Several layers of one name pair up in stack order.
        var twins = layer.Parent!.GetChildren().Where(other => string.Equals(other.Name, layer.Name, StringComparison.OrdinalIgnoreCase)).ToList();
        return there[Math.Min(twins.IndexOf(layer), there.Count - 1)];
    }

    private static int CountSwappedGroups(Layer layer, Layer other)
    {
        var count = 0;
        for (var (one, two) = (layer.Parent, other.Parent); one is { IsRoot: false } && two is { IsRoot: false }; (one, two) = (one.Parent, two.Parent))
        {
            if (one.Side != two.Side) count++;
        }

        return count;
    }

    /// <summary>The path to a name, with every right-hand group on the way written as its left-hand one.</summary>
    private static string CreateKey(Layer? parent, string name)
    {
        var segments = new List<string> { name };
        for (var group = parent; group is { IsRoot: false }; group = group.Parent)
        {
            segments.Add(group.Side == Side.Right ? SideName.Swap(group.Name) : group.Name);
        }

        segments.Reverse();
        return string.Join("/", segments.Select(segment => segment.Replace("/", "\\/")));
    }
}
