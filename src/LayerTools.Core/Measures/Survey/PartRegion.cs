using LayerTools.Model;

namespace LayerTools.Measures.Survey;

/// <summary>Pixels of a part that belong together.</summary>
/// <param name="Box">Their rectangle, canvas px.</param>
/// <param name="Area">How many there are, px².</param>
public readonly record struct PartRegion(Bounds Box, long Area);
