namespace LayerTools.Names;

/// <summary>Words of a name that a vocabulary knows as a part.</summary>
/// <param name="Start">Index of the first word.</param>
/// <param name="Count">How many words.</param>
/// <param name="Part">The part.</param>
internal sealed record PartMatch(int Start, int Count, VocabularyPart Part)
{
    public int End => Start + Count;
}
