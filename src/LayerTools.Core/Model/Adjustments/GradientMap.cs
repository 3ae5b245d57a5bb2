namespace LayerTools.Model.Adjustments;

/// <summary>A colour for each level of luminosity.</summary>
/// <param name="Stops">Colours along the way from dark to light, in order, at least one.</param>
/// <param name="IsReversed">Whether the way goes from light to dark.</param>
internal sealed record GradientMap(IReadOnlyList<GradientMapStop> Stops, bool IsReversed) : Adjustment("gradient by luminosity");
