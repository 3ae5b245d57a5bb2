namespace LayerTools.Model.Adjustments;

/// <summary>White from a level on, black below.</summary>
/// <param name="Level">1 to 255.</param>
internal sealed record Threshold(int Level) : Adjustment("threshold");
