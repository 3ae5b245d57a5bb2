namespace LayerTools.Names;

/// <summary>Finds the part that the words of a name are about.</summary>
/// <param name="vocabulary">The words for parts.</param>
internal sealed class PartFinder(Vocabulary vocabulary)
{
    private const int MostWords = 5;

    private readonly Dictionary<string, VocabularyPart> byKey = vocabulary.Parts.GroupBy(part => part.Key, StringComparer.Ordinal)
        .ToDictionary(same => same.Key, same => same.Last(), StringComparer.Ordinal);

    /// <summary>The part; null if there is none.</summary>
    public PartFinding? Find(List<string> words, NameGuess guesses)
    {
        var matches = FindMatches(words);
        if (ChooseHead(words, matches) is not { } head) return null;
        var spoken = string.Join(" ", words.Skip(head.Start).Take(head.Count));
        var part = head.Part;
        var taken = new HashSet<int>(Enumerable.Range(head.Start, head.Count));
        TakeJoining(words, head, taken);
        if (FindDirected(words, head, taken) is { } directed) (part, spoken) = directed;
        // The same once more in other words, as in two languages.
        foreach (var same in matches.Where(match => match.Part == part && !IsSame(words, match, head))) taken.UnionWith(Enumerable.Range(same.Start, same.Count));

        guesses.Note(IsOwnWord(part, spoken) ? $"'{spoken}' is the part {part.Key}." : $"'{spoken}' is a word for {part.Key}.", FactorOf(part, head, spoken, words.Count));
        NoteRest(words, matches, taken, IsOwnWord(part, spoken) ? NameGuess.OtherPart : NameGuess.OtherPartAndWord, guesses);
        var others = new HashSet<int>(matches.Where(match => !match.Part.IsDetail).SelectMany(match => Enumerable.Range(match.Start, match.Count)));
        others.ExceptWith(taken);
        List<string> Choose(Func<int, bool> isChosen) => [.. words.Where((_, i) => !taken.Contains(i) && isChosen(i))];
        return new PartFinding(part, Choose(_ => true), Choose(others.Contains), Choose(i => !others.Contains(i)));
    }

    private static bool IsSame(List<string> words, PartMatch one, PartMatch two) =>
        one.Count == two.Count && Enumerable.Range(0, one.Count).All(i => Folding.Fold(words[one.Start + i]) == Folding.Fold(words[two.Start + i]));

    private static bool IsOf(string word) => string.Equals(word, "of", StringComparison.OrdinalIgnoreCase);

    private static bool IsJoining(string word) => IsOf(word) || string.Equals(word, "the", StringComparison.OrdinalIgnoreCase);

    /// <summary>Takes the words that only join the part to what stands beside it: "back of the head", "sleeve of the coat".</summary>
    private static void TakeJoining(List<string> words, PartMatch head, HashSet<int> taken)
    {
        for (var at = head.Start - 1; at >= 0 && IsJoining(words[at]); at--) taken.Add(at);
        for (var at = head.End; at < words.Count && IsJoining(words[at]); at++) taken.Add(at);
    }

    private static bool IsOwnWord(VocabularyPart part, string words) => Folding.Fold(words) is var folded && (folded == Folding.Fold(part.English) || folded == Folding.Fold(part.Japanese));

    private static double FactorOf(VocabularyPart part, PartMatch head, string spoken, int words)
    {
        var factor = part != head.Part ? NameGuess.Direction : IsOwnWord(part, spoken) ? 1 : NameGuess.Synonym;
        return part.IsDetail && words > head.Count ? factor * NameGuess.DetailAlone : factor;
    }

    private static PartMatch? ChooseHead(List<string> words, List<PartMatch> matches)
    {
        var whole = matches.Where(match => !match.Part.IsDetail).ToList();
        if (whole.Count == 0) whole = matches;
        for (var i = 0; i < whole.Count - 1; i++)
        {
            if (IsOf(words[whole[i].End])) return whole[i];
        }

        return whole.Count == 0 ? null : whole[whole.Count - 1];
    }

    private static void NoteRest(List<string> words, List<PartMatch> matches, HashSet<int> taken, double otherPart, NameGuess guesses)
    {
        var noted = new HashSet<int>(taken);
        foreach (var other in matches.Where(match => !taken.Contains(match.Start)))
        {
            noted.UnionWith(Enumerable.Range(other.Start, other.Count));
            var spoken = string.Join(" ", words.Skip(other.Start).Take(other.Count));
            if (other.Part.IsDetail) guesses.Note($"'{spoken}' is a detail of it.", NameGuess.Qualifier);
            else guesses.Note($"'{spoken}' would be {other.Part.Key}, but the name seems to be about the other part.", otherPart);
        }

        for (var i = 0; i < words.Count; i++)
        {
            if (noted.Contains(i)) continue;
            if (Qualifiers.Contains(words[i])) guesses.Note($"'{words[i]}' says which piece.", NameGuess.Qualifier);
            else if (IsSmall(words[i])) guesses.Note($"'{words[i]}' is kept.", NameGuess.Qualifier);
            else guesses.Note($"'{words[i]}' is in no vocabulary and is kept.", NameGuess.UnknownWord);
        }
    }

    // A letter or a version tells pieces apart, as a number does.
    private static bool IsSmall(string word) => word.Length == 1 || NameSplitter.IsNumber(word) || (word.Length == 2 && char.IsDigit(word[1]));

    private List<PartMatch> FindMatches(List<string> words)
    {
        var matches = new List<PartMatch>();
        for (var start = 0; start < words.Count; start++)
        {
            for (var count = Math.Min(MostWords, words.Count - start); count > 0; count--)
            {
                if (vocabulary.Find(words.GetRange(start, count)) is not { } part) continue;
                matches.Add(new PartMatch(start, count, part));
                start += count - 1;
                break;
            }
        }

        return matches;
    }

    /// <summary>The part's front, back, upper piece ... where the vocabulary has that as a part of its own and a word behind or right before the part says so.</summary>
    private (VocabularyPart Part, string Spoken)? FindDirected(List<string> words, PartMatch head, HashSet<int> taken)
    {
        var before = head.Start - 1;
        while (before >= 0 && taken.Contains(before)) before--;
        var places = Enumerable.Range(head.End, words.Count - head.End).Prepend(before);
        foreach (var at in places.Where(at => at >= 0))
        {
            if (Qualifiers.FindDirection(words[at]) is not { } direction) continue;
            if (!byKey.TryGetValue($"{head.Part.Key}-{direction}", out var part) && !byKey.TryGetValue($"{direction}-{head.Part.Key}", out part)) continue;
            taken.Add(at);
            var spoken = words.Skip(head.Start).Take(head.Count);
            return (part, string.Join(" ", at < head.Start ? spoken.Prepend(words[at]) : spoken.Append(words[at])));
        }

        return null;
    }
}
