using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>What becomes of a layer's name in a profile's form.</summary>
/// <param name="Layer">The layer.</param>
/// <param name="New">The new name, which may be the old one; null if the name stays because it is not understood.</param>
/// <param name="Certainty">How sure the reading is, 0 to 1.</param>
/// <param name="Why">How the name was understood, or why not, as sentences.</param>
public sealed record NormalizedLayer(Layer Layer, string? New, double Certainty, string Why);
