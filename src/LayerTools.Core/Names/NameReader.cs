using System.Globalization;

namespace LayerTools.Names;

/// <summary>
/// Takes names apart by a vocabulary: <c>Hair Front Tip_L_02</c> is the part hair-front, left, number 2, with "tip" left over.
/// <para>A word begins at a joint, a bracket, a capital in lower case letters, a change of script, around digits; text without spaces is cut so that as much
/// of it as possible is known. Words for a copy go with their number; the last other number is the number; words for a side count wherever they stand,
/// unless they contradict each other. The longest run of words that the vocabulary knows is a part; of several parts the last one is meant
/// ("Arm sleeve" is a sleeve; "back of hat" and "sleeve of arm" go by the first), while details ("coat button") and directions ("sleeve, back") belong to the part beside them.</para>
/// <para><see cref="ParsedName.Certainty"/> is a rule of thumb of ours, not a probability: 1 for a name of which every word is understood, less for each guess,
/// as <see cref="NameGuess"/> lists them.</para>
/// </summary>
/// <param name="style">The words and tokens to know.</param>
public sealed class NameReader(NamingStyle style)
{
    // No name of a part is longer; what is, is not worth the time.
    private const int LongestName = 1000;

    private readonly NameSplitter splitter = new(style.Sides, style.Vocabulary);
    private readonly PartFinder parts = new(style.Vocabulary);

    /// <summary>Takes a name apart.</summary>
    /// <returns>The reading; without a part and with certainty 0 where the vocabulary has no word of the name.</returns>
    public ParsedName Read(string name)
    {
        if (name is null) throw new ArgumentNullException(nameof(name));
        if (name.Length > LongestName) return NotUnderstood(name, Side.None, null, name, "It is longer than any name of a part.");

        var guesses = new NameGuess();
        var words = splitter.Split(name).ToList();
        DropCopies(words, guesses);
        var side = TakeSide(name, words, guesses);
        var number = TakeNumber(words, guesses);
        var plain = words.Select(word => word.Text).ToList();
        if (DefaultNames.Contains(plain)) return NotUnderstood(name, side, number, Join(plain, name), plain.Count == 0 ? "It has no words." : "It is a name that any new layer gets.");
        if (parts.Find(plain, guesses) is not { } found) return NotUnderstood(name, side, number, Join(plain, name), "The vocabulary has none of its words.");
        return new ParsedName
        {
            Text = name,
            Part = found.Part,
            Side = side,
            Number = number,
            Rest = Join(found.Rest, name),
            OtherParts = Join(found.OtherParts, name),
            Remarks = Join(found.Remarks, name),
            Certainty = guesses.Certainty,
            Reasons = guesses.Reasons,
        };
    }

    private static ParsedName NotUnderstood(string name, Side side, int? number, string rest, string why) =>
        new() { Text = name, Side = side, Number = number, Rest = rest, Certainty = 0, Reasons = [why] };

    private static void DropCopies(List<NameWord> words, NameGuess guesses)
    {
        var copy = words.Where(word => word.Kind == NameWordKind.Copy).ToList();
        if (copy.Count == 0) return;
        guesses.Note($"'{string.Join(" ", copy.Select(word => word.Text))}' only says that it is a copy.", NameGuess.Copy);
        var first = words.IndexOf(copy[0]);
        if (first + 1 < words.Count && words[first + 1].Text is "of" or "von" or "de" or "di") words.RemoveAt(first + 1);
        words.RemoveAll(word => word.Kind == NameWordKind.Copy);
    }

    private static Side TakeSide(string name, List<NameWord> words, NameGuess guesses)
    {
        var tokens = words.Where(word => SideOf(word) != Side.None).ToList();
        if (tokens.Count == 0) return Side.None;
        var plain = SideName.Parse(name).Side;
        if (tokens.Exists(token => SideOf(token) != SideOf(tokens[0])))
        {
            // What every file may use is heard before what only this reader takes for a side.
            tokens.RemoveAll(token => SideOf(token) != plain);
            guesses.Note("It says both sides.", NameGuess.BothSides);
            if (tokens.Count == 0) return Side.None;
        }

        var side = SideOf(tokens[0]);
        var isAtAnEnd = words[0] == tokens[0] || words.Last(word => word.Kind != NameWordKind.Number) == tokens[tokens.Count - 1];
        guesses.Note($"'{tokens[0].Text}' says {side.ToString().ToLowerInvariant()}.", isAtAnEnd || plain == side ? 1 : NameGuess.SideWithin);
        words.RemoveAll(tokens.Contains);
        return side;
    }

    private static Side SideOf(NameWord word) => word.Kind switch
    {
        NameWordKind.Left => Side.Left,
        NameWordKind.Right => Side.Right,
        _ => Side.None,
    };

    private static int? TakeNumber(List<NameWord> words, NameGuess guesses)
    {
        var numbers = words.Where(word => word.Kind == NameWordKind.Number).ToList();
        if (numbers.Count == 0) return null;
        var last = numbers[numbers.Count - 1];
        words.Remove(last);
        guesses.Note($"{last.Text} is its number.", numbers.Count == 1 ? 1 : NameGuess.SeveralNumbers);
        return int.Parse(last.Text, NumberStyles.None, CultureInfo.InvariantCulture);
    }

    /// <summary>Words that are left over. Capitals that only begin a word or a whole name in capitals say nothing; those of a short form (FX) or of one letter (A) do.</summary>
    private static string Join(IReadOnlyList<string> words, string name)
    {
        var isShouted = !name.Any(char.IsLower);
        return string.Join(" ", words.Select(word => word.Length > 1 && (isShouted || word.Skip(1).All(c => !char.IsUpper(c))) ? word.ToLowerInvariant() : word));
    }
}
