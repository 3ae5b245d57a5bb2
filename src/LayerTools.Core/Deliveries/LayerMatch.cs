using LayerTools.Model;

namespace LayerTools.Deliveries;

/// <summary>A layer in the old and in the new file.</summary>
internal readonly record struct LayerMatch(Layer Old, Layer New, MatchEvidence Evidence);
