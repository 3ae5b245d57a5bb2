namespace LayerTools.Model.Effects;

/// <summary>An effect that cannot be drawn.</summary>
/// <param name="Reason">What it is, in words that follow the layer's path.</param>
internal sealed record UndrawnEffect(string Reason) : Effect(BlendMode.Normal, 1f);
