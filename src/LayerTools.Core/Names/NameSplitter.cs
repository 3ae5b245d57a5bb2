namespace LayerTools.Names;

/// <summary>Cuts a name into words and tells what each is.</summary>
internal sealed class NameSplitter
{
    // More digits than fit a number are a word.
    private const int MostDigits = 9;

    private readonly SideWords tokens;
    private readonly UnspacedText unspaced;

    public NameSplitter(SideStyle sides, Vocabulary vocabulary)
    {
        tokens = new SideWords(sides);
        unspaced = new UnspacedText(
            word => vocabulary.Find([word]) is not null || Qualifiers.Contains(word) || CopyWords.Contains(word) || tokens.Find(word) is not null,
            Math.Max(vocabulary.LongestWord, 4) + 1);
    }

    /// <summary>The words of a name in their order; joints, brackets and the particle の are left out.</summary>
    public IReadOnlyList<NameWord> Split(string name)
    {
        var pieces = NamePieces.Cut(Width.Fold(name)).ToList();
        var words = new List<NameWord>();
        for (var i = 0; i < pieces.Count; i++)
        {
            var (start, text) = pieces[i];
            if (IsUnspaced(text))
            {
                words.AddRange(unspaced.Cut(text).Select(word => new NameWord(start + word.Start, word.Text, Classify(word.Text))));
            }
            else if (i + 1 < pieces.Count && pieces[i + 1].Start == start + text.Length && IsOneWord(text, pieces[i + 1].Text, isFirst: start == 0))
            {
                words.Add(new NameWord(start, text + pieces[++i].Text, NameWordKind.Plain));
            }
            else
            {
                words.Add(new NameWord(start, text, Classify(text)));
            }
        }

        // What is left of a particle that stood before a space or before a word for a copy.
        words.RemoveAll(word => word.Text == "の");
        return MarkNumbersOfCopies(words);
    }

    public static bool IsNumber(string text) => text.All(c => c is >= '0' and <= '9') && text.Length <= MostDigits;

    private NameWordKind Classify(string text)
    {
        if (IsNumber(text)) return NameWordKind.Number;
        if (CopyWords.Contains(text)) return NameWordKind.Copy;
        return tokens.Find(text) switch
        {
            Side.Left => NameWordKind.Left,
            Side.Right => NameWordKind.Right,
            _ => NameWordKind.Plain,
        };
    }

    private static bool IsUnspaced(string text) => text.Length > 1 && text.All(c => c >= '\u2E80' && char.IsLetter(c) || c is '々' or 'ー');

    /// <summary>Whether letters and digits that touch are one word, such as v2, 3D or 2nd; a side and a number are not, unless nothing stands before them.</summary>
    private bool IsOneWord(string text, string next, bool isFirst)
    {
        if (char.IsLetter(text[0]) && char.IsDigit(next[0])) return text.Length == 1 && text[0] < '\u2E80' && (isFirst || tokens.Find(text) is null);
        if (!char.IsDigit(text[0]) || !char.IsLetter(next[0]) || next[0] >= '\u2E80') return false;
        // "2left" says a side, "2l" may be litres.
        return tokens.Find(next) is null ? next.Length == 1 || char.IsLower(next[0]) : next.Length == 1 && char.IsLower(next[0]);
    }

    private static List<NameWord> MarkNumbersOfCopies(List<NameWord> words)
    {
        for (var i = 1; i < words.Count; i++)
        {
            if (words[i].Kind == NameWordKind.Number && words[i - 1].Kind == NameWordKind.Copy) words[i] = words[i] with { Kind = NameWordKind.Copy };
        }

        return words;
    }
}
