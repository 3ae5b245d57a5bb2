namespace LayerTools.Measures.Budget;

/// <summary>Boxes on pages.</summary>
/// <param name="Places">The place of each box, in the order the boxes were given.</param>
/// <param name="PageCount">Pages that hold them.</param>
/// <param name="FewestPages">What no packing can do with less, see <see cref="BoxPacker.FindFewestPages"/>.</param>
internal sealed record PackOutcome(IReadOnlyList<PackPlace> Places, int PageCount, int FewestPages);
