namespace LayerTools.Model.Adjustments;

/// <summary>Few steps in each channel.</summary>
/// <param name="Steps">2 to 255.</param>
internal sealed record Posterization(int Steps) : Adjustment("posterisation");
