namespace LayerTools.Model.Adjustments;

/// <summary>Coloured glass before everything below.</summary>
/// <param name="Color">The glass, 0 to 1 each.</param>
/// <param name="Density">How strong it is, 0 to 1.</param>
/// <param name="KeepsLuminosity">Whether pixels stay as light as they were.</param>
internal sealed record ColorFilter(RgbTriple Color, double Density, bool KeepsLuminosity) : Adjustment("colour filter");
