using LayerTools.Model.Fills;

namespace LayerTools.Model.Effects;

/// <summary>The layer's shape, softened and perhaps moved: a shade or a halo, behind the layer or, turned inside out, on it.</summary>
internal sealed record ShadeEffect(BlendMode BlendMode, float Opacity, FillColor Color) : Effect(BlendMode, Opacity)
{
    /// <summary>Whether it falls on the layer, and not on what lies behind it.</summary>
    public bool IsInward { get; init; }

    /// <summary>Whether it is a halo, which a layer can mix with its own pixels before it joins what lies below.</summary>
    public bool IsHalo { get; init; }

    /// <summary>How far it is moved to the right, px.</summary>
    public double Right { get; init; }

    /// <summary>How far it is moved down, px.</summary>
    public double Down { get; init; }

    /// <summary>Reach of the softening beyond the edge, px.</summary>
    public double Size { get; init; }

    /// <summary>The part of the size that is solid, 0 to 1.</summary>
    public double Spread { get; init; }

    /// <summary>How much stronger than the softened shape it is, at most solid: 1 for a shade, 2 for a halo of the usual range.</summary>
    public double Strength { get; init; } = 1;

    /// <summary>Of an inward one: whether it is strongest in the middle of the shape, and not at its edge.</summary>
    public bool IsFromCentre { get; init; }

    /// <summary>Of an outward one: whether it is left out where the layer lies on it, be it see-through.</summary>
    public bool IsHiddenByLayer { get; init; } = true;
}
