namespace LayerTools.Model;

/// <summary>A layer is seen only where its own colour and the colour below it lie within these limits.</summary>
/// <param name="Channel">The colour channel that is looked at; null for the luminosity of all.</param>
/// <param name="Source">Limits for the layer's own colour.</param>
/// <param name="Backdrop">Limits for what lies below.</param>
internal sealed record BlendingRange(int? Channel, BrightnessLimits Source, BrightnessLimits Backdrop);
