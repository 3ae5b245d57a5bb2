using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>Where reflections go.</summary>
internal abstract record MirrorPlace
{
    private MirrorPlace()
    {
    }

    /// <summary>Directly behind the original and all that is clipped to it.</summary>
    public sealed record BehindRun(Layer Original) : MirrorPlace;

    /// <summary>Directly behind the original, clipped to the same base.</summary>
    public sealed record BehindClipped(Layer Original) : MirrorPlace;

    /// <summary>Into the opposite group, between the opposites of the original's neighbours.</summary>
    public sealed record InGroup(Layer Group, Layer Original) : MirrorPlace;

    /// <summary>Among the layers clipped to the opposite of the original's base.</summary>
    public sealed record InRun(Layer OriginalBase, Layer Original) : MirrorPlace;

    /// <summary>In the place of a layer, which goes.</summary>
    public sealed record InsteadOf(Layer Existing) : MirrorPlace;
}
