namespace LayerTools.Model.Fills;

/// <summary>A colour at a place of a gradient.</summary>
/// <param name="Place">0 to 1.</param>
/// <param name="Midpoint">Where between the stop before and this one the mean of both is reached, 0 to 1.</param>
/// <param name="Color">The colour.</param>
internal readonly record struct ColorStop(double Place, double Midpoint, FillColor Color);
