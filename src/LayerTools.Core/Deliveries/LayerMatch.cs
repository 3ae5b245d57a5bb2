using LayerTools.Model;

namespace LayerTools.Deliveries;

/// <summary>A layer in the old and in the new file.</summary>
/// <param name="Old">The layer in the old file.</param>
/// <param name="New">The layer in the new one.</param>
/// <param name="Evidence">By what it was found again.</param>
/// <param name="Likeness">For <see cref="MatchEvidence.Likeness"/>: how alike both look, or how much of what two groups hold is in both, 0 to 1.</param>
/// <param name="Rival">A layer of either file that would fit one of both as well; null if there is none.</param>
internal sealed record LayerMatch(Layer Old, Layer New, MatchEvidence Evidence, double? Likeness = null, Layer? Rival = null);
