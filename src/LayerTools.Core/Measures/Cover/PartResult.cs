namespace LayerTools.Measures.Cover;

/// <summary>What was found out about one part.</summary>
/// <param name="Total">The part with all its neighbours.</param>
/// <param name="Seams">The part with each of them, front to back.</param>
internal sealed record PartResult(PartCover Total, IReadOnlyList<SeamCover> Seams);
