namespace LayerTools.Names;

/// <summary>The words for the parts of a figure.</summary>
public sealed class Vocabulary
{
    private static readonly Lazy<Vocabulary> Shipped = new(() => new Vocabulary(VocabularyFile.Read()));

    private readonly Dictionary<string, VocabularyPart> byWord = new(StringComparer.Ordinal);

    /// <param name="parts">The parts; where two share a word, the later one has it, so that a profile's parts come after the built-in ones.</param>
    public Vocabulary(IEnumerable<VocabularyPart> parts)
    {
        Parts = [.. parts];
        foreach (var part in Parts)
        {
            foreach (var word in new[] { part.English, part.Japanese }.Concat(part.Synonyms).Select(Folding.Fold))
            {
                if (word.Length == 0) continue;
                byWord[word] = part;
                LongestWord = Math.Max(LongestWord, word.Length);
            }
        }
    }

    /// <summary>A vocabulary without words.</summary>
    public static Vocabulary Empty { get; } = new([]);

    /// <summary>The body, hair, face and clothing parts that ship with the library, in English and Japanese. General words of the trade, put together by us.</summary>
    public static Vocabulary BuiltIn => Shipped.Value;

    /// <summary>All parts, in the order given.</summary>
    public IReadOnlyList<VocabularyPart> Parts { get; }

    /// <summary>UTF-16 units of the longest word, folded.</summary>
    internal int LongestWord { get; }

    /// <summary>
    /// The part that words name as a whole. Case, full and half width, hiragana and katakana, joints (spaces, hyphens, underscores, the particle の)
    /// and the plural make no difference: <c>Eye-Lashes</c>, <c>EYELASH</c>, <c>マツゲ</c> are one.
    /// </summary>
    /// <returns>Null if no part has that name.</returns>
    public VocabularyPart? Find(string words)
    {
        if (words is null) throw new ArgumentNullException(nameof(words));
        return Find(Words(words));
    }

    /// <summary>The part that some words name together.</summary>
    /// <param name="words">At most a few, each without joints.</param>
    internal VocabularyPart? Find(IReadOnlyList<string> words)
    {
        const int mostWords = 5;
        if (words.Count is 0 or > mostWords) return null;
        var folded = words.Select(Folding.Fold).ToList();
        if (folded.Sum(word => word.Length) > LongestWord + 3 * mostWords) return null;
        return Find(folded, 0, string.Empty);
    }

    private static string[] Words(string text) => Width.Fold(text).Split(Folding.Joints.ToCharArray(), StringSplitOptions.RemoveEmptyEntries);

    private VocabularyPart? Find(List<string> words, int at, string before)
    {
        if (at == words.Count) return byWord.TryGetValue(before, out var found) ? found : null;
        foreach (var form in Plural.Forms(words[at]))
        {
            if (Find(words, at + 1, before + form) is { } part) return part;
        }

        return null;
    }
}
