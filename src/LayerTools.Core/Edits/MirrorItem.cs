using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>Reflections that go to one place together: a layer, or a base with what is clipped to it, front to back.</summary>
internal sealed record MirrorItem(IReadOnlyList<MirrorPair> Block, MirrorPlace Place)
{
    /// <summary>The group that gets the reflections.</summary>
    public Layer FindGroup(IReadOnlyDictionary<Layer, Layer> opposites) => Place switch
    {
        MirrorPlace.BehindRun place => place.Original.Parent!,
        MirrorPlace.BehindClipped place => place.Original.Parent!,
        MirrorPlace.InGroup place => place.Group,
        MirrorPlace.InRun place => opposites[place.OriginalBase].Parent!,
        MirrorPlace.InsteadOf place => place.Existing.Parent!,
        _ => throw new InvalidOperationException(),
    };
}
