namespace LayerTools.Model.Effects;

/// <summary>Something drawn from a layer's shape, beside its own pixels.</summary>
/// <param name="BlendMode">How it mixes with what lies below it.</param>
/// <param name="Opacity">0 to 1.</param>
internal abstract record Effect(BlendMode BlendMode, float Opacity);
