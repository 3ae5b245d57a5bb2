namespace LayerTools.Model.Adjustments;

/// <summary>More or less light.</summary>
/// <param name="Stops">Each doubles the light.</param>
/// <param name="Offset">Light that is added, 1 for white.</param>
/// <param name="Gamma">Above 1 the middle tones get lighter; above 0.</param>
internal sealed record Exposure(double Stops, double Offset, double Gamma) : Adjustment("exposure");
