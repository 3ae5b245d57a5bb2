namespace LayerTools.Model.Adjustments;

/// <summary>A colour on the way from dark to light.</summary>
/// <param name="Place">0 to 1.</param>
/// <param name="Middle">Where half of the way to the next colour is made, 0 to 1 of the distance.</param>
/// <param name="Color">0 to 1 each.</param>
internal sealed record GradientMapStop(double Place, double Middle, RgbTriple Color);
