using LayerTools.Model;

namespace LayerTools.Edits.Rig;

/// <summary>
/// Blend modes of baked parts. A rig knows normal, multiply and additive. Any other mode comes to the same as normal where nothing lies below the part,
/// since every mode shows the part's own colour over transparency (W3C Compositing and Blending Level 1); elsewhere it stays and is reported.
/// </summary>
internal static class RigModes
{
    public static void Settle(IEnumerable<RigEntry> entries)
    {
        foreach (var entry in entries.Where(entry => entry is { Outcome: RigOutcome.Baked or RigOutcome.Unchanged, Target.IsGroup: false }))
        {
            var target = entry.Target!;
            if (target.BlendMode is BlendMode.Normal or BlendMode.Multiply or BlendMode.LinearDodge) continue;
            if (target.FillOpacity == byte.MaxValue && !RigKeeper.HasBackdropRules(target) && !HasBelow(target))
            {
                entry.Baked.Add($"blend mode {target.BlendMode}, since nothing lies below");
                entry.Outcome = RigOutcome.Baked;
                target.BlendMode = BlendMode.Normal;
            }
            else
            {
                entry.NotBaked.Add($"blend mode {target.BlendMode}");
            }
        }
    }

    /// <summary>Whether anything, hidden or not, lies below some of the part before a group ends that is put together apart.</summary>
    private static bool HasBelow(Layer part)
    {
        for (var layer = part; ; layer = layer.Parent!)
        {
            var siblings = layer.Parent!.GetChildren();
            for (var i = layer.IndexInParent + 1; i < siblings.Count; i++)
            {
                if (Touches(siblings[i], part.Bounds)) return true;
            }

            if (layer.Parent is { IsRoot: true } or not { BlendMode: BlendMode.PassThrough }) return false;
        }
    }

    private static bool Touches(Layer below, Bounds bounds) =>
        below.GetLayers().Prepend(below).Any(layer => layer.Kind is LayerKind.Fill or LayerKind.Shape || layer.Detail.Features.HasFlag(LayerFeatures.Effects) || layer.Detail.Artboard is not null
            || !(layer.IsGroup ? Bounds.Empty : layer.Bounds).Intersect(bounds).IsEmpty);
}
