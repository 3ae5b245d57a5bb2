using LayerTools.Model.Fills;

namespace LayerTools.Model.Effects;

/// <summary>A fill over the layer, where the layer is.</summary>
internal sealed record FillEffect(BlendMode BlendMode, float Opacity, Fill Fill) : Effect(BlendMode, Opacity);
