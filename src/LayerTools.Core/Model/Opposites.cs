using LayerTools.Names;

namespace LayerTools.Model;

/// <summary>
/// Finds the layer on the other side for each sided layer of a file, as the tree stood when this was made.
/// It is the one that has the swapped name and lies in the same groups, where each sided group may be the same or its opposite.
/// The side may be written another way, and so may what joins words: <c>leg_R</c> is the opposite of <c>Leg L</c>, unless there is a <c>Leg R</c> beside it.
/// </summary>
internal sealed class Opposites
{
    private readonly Dictionary<string, List<Layer>> byKey = new(StringComparer.OrdinalIgnoreCase);

    public Opposites(LayerFile file)
    {
        foreach (var layer in file.GetLayers())
        {
            var key = CreateKey(layer, layer.Side);
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
        var opposite = layer.Side switch { Side.Left => Side.Right, Side.Right => Side.Left, _ => Side.None };
        if (!byKey.TryGetValue(CreateKey(layer, opposite), out var found)) return null;
        var nearest = found.Where(isCandidate)
            .OrderByDescending(other => CountSwappedGroups(layer, other)).ThenByDescending(other => other.Parent == layer.Parent).FirstOrDefault()?.Parent;
        if (nearest is null) return null;
        var there = found.Where(other => other.Parent == nearest).ToList();
        var twins = byKey[CreateKey(layer, layer.Side)].Where(other => other.Parent == layer.Parent).ToList();

        // One that is written the same way comes before others.
        var swapped = SideName.Swap(layer.Name);
        if (there.Exists(other => AreSame(other.Name, swapped)))
        {
            there.RemoveAll(other => !AreSame(other.Name, swapped));
            twins.RemoveAll(other => !AreSame(other.Name, layer.Name));
        }

        // Several layers of one name pair up in stack order.
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

    private static bool AreSame(string one, string two) => string.Equals(one, two, StringComparison.OrdinalIgnoreCase);

    /// <summary>A sided name without its side and with one kind of joint between words; other names as they are.</summary>
    private static string Spell(Layer layer) => layer.Side == Side.None ? layer.Name : new string([.. layer.BaseName.Select(letter => letter is '_' or '-' or '.' or '\u3000' ? ' ' : letter)]);

    /// <summary>The path to a layer as if it had a side, with sided groups on the way as if they had none but were marked.</summary>
    private static string CreateKey(Layer layer, Side side)
    {
        const char Separator = '\0';
        var segments = new List<string> { $"{Escape(layer)}{Separator}{side}" };
        for (var group = layer.Parent; group is { IsRoot: false }; group = group.Parent)
        {
            segments.Add($"{Escape(group)}{Separator}{(group.Side == Side.None ? "" : "sided")}");
        }

        segments.Reverse();
        return string.Join("/", segments);

        static string Escape(Layer layer) => Spell(layer).Replace("/", "\\/");
    }
}
