using LayerTools.Model;

namespace LayerTools.Measures.Stacking;

/// <summary>Layers of one group that keep together: a layer with what is clipped to it, and in front of it what belongs nowhere and lies on it.</summary>
/// <param name="Layers">Front to back.</param>
/// <param name="Owner">The layer whose name says where they belong; the front-most where none does.</param>
/// <param name="Rank">Where they belong, 0 = front-most; null where nobody knows.</param>
internal sealed record StackBlock(IReadOnlyList<Layer> Layers, Layer Owner, int? Rank);
