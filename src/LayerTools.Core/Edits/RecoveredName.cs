using LayerTools.Deliveries;
using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>The name that a layer had in an older delivery.</summary>
/// <param name="Layer">The layer.</param>
/// <param name="Old">The name it had; null if it was not found, or if it cannot be told which of several it was.</param>
/// <param name="MatchedBy">By what it was found again.</param>
/// <param name="Certainty">How sure that is, 0 to 1; a rule of thumb.</param>
/// <param name="Why">How it was found, or why not, as a sentence.</param>
public sealed record RecoveredName(Layer Layer, string? Old, MatchEvidence MatchedBy, double Certainty, string Why);
