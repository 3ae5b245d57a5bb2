namespace LayerTools.Names;

/// <summary>The words for the parts of a figure.</summary>
public sealed class Vocabulary
{
    /// <param name="parts">The parts; where two share a word, the later one has it, so that a profile's parts come after the built-in ones.</param>
    public Vocabulary(IEnumerable<VocabularyPart> parts)
    {
        Parts = [.. parts];
    }

    /// <summary>A vocabulary without words.</summary>
    public static Vocabulary Empty { get; } = new([]);

    /// <summary>All parts, in the order given.</summary>
    public IReadOnlyList<VocabularyPart> Parts { get; }
}
