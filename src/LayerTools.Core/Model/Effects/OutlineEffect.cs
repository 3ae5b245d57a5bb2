using LayerTools.Model.Fills;

namespace LayerTools.Model.Effects;

/// <summary>A band along the layer's edge, of a width (<paramref name="Size"/>) in px.</summary>
internal sealed record OutlineEffect(BlendMode BlendMode, float Opacity, Fill Fill, OutlinePlace Place, double Size) : Effect(BlendMode, Opacity);
