using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>Puts reflections into the tree, front-most first, so that each finds its neighbours' opposites in place.</summary>
internal sealed class MirrorAttachment(IReadOnlyDictionary<Layer, Layer> existing)
{
    private readonly Dictionary<Layer, Layer> opposites = existing.ToDictionary(item => item.Key, item => item.Value);

    public void Attach(MirrorItem item)
    {
        var group = item.FindGroup(opposites);
        var index = FindIndex(item.Place);
        if (item.Place is MirrorPlace.InsteadOf place) place.Existing.Detach();
        foreach (var pair in item.Block)
        {
            group.Insert(index++, pair.Copy);
            opposites[pair.Source] = pair.Copy;
        }
    }

    private int FindIndex(MirrorPlace place) => place switch
    {
        MirrorPlace.BehindRun behind => behind.Original.IndexInParent + 1,
        MirrorPlace.BehindClipped behind => behind.Original.IndexInParent + 1,
        MirrorPlace.InGroup inside => FindIndexInGroup(inside.Group, inside.Original),
        MirrorPlace.InRun inside => FindIndexInRun(inside.OriginalBase, inside.Original),
        MirrorPlace.InsteadOf instead => instead.Existing.IndexInParent,
        _ => throw new InvalidOperationException(),
    };

    private int FindIndexInGroup(Layer group, Layer original)
    {
        var bases = original.Parent!.GetChildren().Where(layer => !layer.Clipped).ToList();
        var i = bases.IndexOf(original);
        for (var front = i - 1; front >= 0; front--)
        {
            if (FindRun(bases[front], group) is { Base: { } @base }) return @base.IndexInParent + 1;
        }

        for (var back = i + 1; back < bases.Count; back++)
        {
            if (FindRun(bases[back], group) is { } run) return run.Layers[0].IndexInParent;
        }

        return 0;
    }

    private ClippingRun? FindRun(Layer original, Layer group) =>
        opposites.TryGetValue(original, out var opposite) && opposite.Parent == group ? ClippingRun.Of(opposite) : null;

    private int FindIndexInRun(Layer originalBase, Layer original)
    {
        var clipped = ClippingRun.Of(original).Clipped.ToList();
        var oppositeBase = opposites[originalBase];
        var run = ClippingRun.Of(oppositeBase).Clipped;
        var i = clipped.IndexOf(original);
        for (var front = i - 1; front >= 0; front--)
        {
            if (opposites.TryGetValue(clipped[front], out var opposite) && run.Contains(opposite)) return opposite.IndexInParent + 1;
        }

        for (var back = i + 1; back < clipped.Count; back++)
        {
            if (opposites.TryGetValue(clipped[back], out var opposite) && run.Contains(opposite)) return opposite.IndexInParent;
        }

        return oppositeBase.IndexInParent;
    }
}
