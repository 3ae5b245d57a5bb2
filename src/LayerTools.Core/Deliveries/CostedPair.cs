namespace LayerTools.Deliveries;

/// <summary>A column that a row may be assigned to.</summary>
/// <param name="Column">The column.</param>
/// <param name="Cost">What it costs.</param>
internal readonly record struct CostedPair(int Column, double Cost);
