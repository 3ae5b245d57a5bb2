namespace LayerTools.Measures.Symmetry;

/// <summary>How far an axis leans, or why that is not known.</summary>
/// <param name="Degrees">From upright, −45 to 45; above 0 its top leans to the right. Null where no axis stands out.</param>
/// <param name="Agreement">How well the coverages agree across that axis, 0 to 1.</param>
/// <param name="Note">Why there is none; empty if there is one.</param>
internal readonly record struct Tilt(double? Degrees, double? Agreement, string Note);
