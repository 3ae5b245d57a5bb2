namespace LayerTools.Model.Adjustments;

/// <summary>Stretches tones between two levels.</summary>
/// <param name="Channels">For all colours together, then for each colour.</param>
internal sealed record Levels(IReadOnlyList<LevelsRange> Channels) : Adjustment("levels");
