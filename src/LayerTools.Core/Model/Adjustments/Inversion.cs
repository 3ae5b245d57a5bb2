namespace LayerTools.Model.Adjustments;

/// <summary>Light becomes dark and dark light.</summary>
internal sealed record Inversion() : Adjustment("inversion");
