namespace LayerTools.Names;

/// <summary>The part of a name, and the words that are left over.</summary>
/// <param name="Part">The part.</param>
/// <param name="Rest">All words that are left over, in their order.</param>
/// <param name="OtherParts">Those of them that would name other parts.</param>
/// <param name="Remarks">The rest of them.</param>
internal sealed record PartFinding(VocabularyPart Part, IReadOnlyList<string> Rest, IReadOnlyList<string> OtherParts, IReadOnlyList<string> Remarks);
