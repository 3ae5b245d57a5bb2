namespace LayerTools.Model.Fills;

/// <summary>An opacity, 0 to 1, at a place of a gradient.</summary>
/// <param name="Place">0 to 1.</param>
/// <param name="Midpoint">Where between the stop before and this one the mean of both is reached, 0 to 1.</param>
/// <param name="Opacity">0 to 1.</param>
internal readonly record struct OpacityStop(double Place, double Midpoint, float Opacity);
