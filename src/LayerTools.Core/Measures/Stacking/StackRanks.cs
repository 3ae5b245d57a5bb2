using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Profiles;

namespace LayerTools.Measures.Stacking;

/// <summary>Where layers belong in the stack, by the zones of a profile: head to toe, front to back, with the back of hair and clothing behind the body (common practice).</summary>
internal sealed class StackRanks
{
    private static readonly string[] Things =
    [
        "effect", "prop-front", "prop-back", "headwear", "eyewear", "neckwear", "sleeve", "outerwear", "torso-wear", "hip-wear", "footwear", "leg-wear", "clothing-back",
    ];

    private readonly Dictionary<string, int> ranks = new(StringComparer.Ordinal);
    private readonly StatusOptions roles = new();
    private readonly Func<Layer, ParsedName> readName;

    /// <param name="profile">The order, and the words for parts.</param>
    /// <param name="readName">Takes a layer's name apart by the profile's words; null to do it here.</param>
    public StackRanks(LayerProfile profile, Func<Layer, ParsedName>? readName = null)
    {
        for (var i = 0; i < profile.Stack.Count; i++) ranks[profile.Stack[i]] = i;
        var reader = new NameReader(profile.Naming);
        this.readName = readName ?? (layer => reader.Read(layer.Name));
    }

    /// <summary>The place of the layer's zone, 0 = front-most; null where neither its name nor, of a group, the names in it say one: all of them have to be known and those that have a place to agree.</summary>
    public int? RankOf(Layer layer)
    {
        var rank = RankByName(layer);
        if (rank is not null || !layer.IsGroup) return rank;
        var inside = new HashSet<int>();
        foreach (var part in ClippingRun.Split(layer.GetChildren()).Select(run => run.Base).OfType<Layer>())
        {
            if (RankOf(part) is { } known) inside.Add(known);
            else if (readName(part).Part is null) return null;
        }

        return inside.Count == 1 ? inside.First() : null;
    }

    /// <summary>Whether a group is called after a thing that is worn or carried: what lies in it are pieces of the thing, like the badge on a hat, and keep their order, whatever part of
    /// the body their names would belong to elsewhere.</summary>
    public bool IsThing(Layer group) => readName(group).SureZone is { } zone && Array.IndexOf(Things, zone) >= 0;

    /// <summary>Whether a layer without a zone is meant for all that lies below it, and not for its neighbour.</summary>
    public bool LiesOverAll(Layer layer) => layer.Kind is LayerKind.Adjustment or LayerKind.Fill || roles.TellRole(layer) is LayerRole.Sketch or LayerRole.Guide;

    private int? RankByName(Layer layer)
    {
        // A sketch of the hair is no hair.
        if (roles.TellRole(layer) is LayerRole.Sketch or LayerRole.Guide) return null;
        return readName(layer).SureZone is { } zone && ranks.TryGetValue(zone, out var rank) ? rank : null;
    }
}
