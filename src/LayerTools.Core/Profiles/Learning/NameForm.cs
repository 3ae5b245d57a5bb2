using System.Text.RegularExpressions;
using LayerTools.Names;

namespace LayerTools.Profiles.Learning;

/// <summary>The form of a name, less its side and its number: what it is made of and how that is put together.</summary>
/// <param name="Text">The name without them.</param>
/// <param name="Words">Its words, in lower case.</param>
internal sealed record NameForm(string Text, IReadOnlyList<string> Words)
{
    private static readonly Regex NumberAtEnd = new(@"[\s_\-.:,;~+|　＿－．]*[0-9]+\z", RegexOptions.CultureInvariant);

    /// <summary>A word begins at a capital behind a small letter (<c>upperArm</c>); what is no letter parts words.</summary>
    private static readonly Regex Word = new(@"\p{Lu}?[\p{Ll}\p{M}]+|\p{Lu}+(?!\p{Ll})|\p{Lo}[\p{Lo}\p{Lm}\p{M}]*", RegexOptions.CultureInvariant);

    public bool IsJapanese => Text.Any(character => Folding.IsHiragana(character) || Folding.IsKatakana(character) || character is >= '一' and <= '鿿');

    public static NameForm Of(string name)
    {
        var text = NumberAtEnd.Replace(SideName.Parse(name).BaseName, string.Empty);
        return new NameForm(text, [.. Word.Matches(text).Cast<Match>().Select(match => match.Value.ToLowerInvariant())]);
    }

    /// <summary>Whether the words, written in a case with a separator, give the name.</summary>
    public bool Follows(NameCase nameCase, string separator) => Text == string.Join(nameCase is NameCase.Pascal or NameCase.Camel ? string.Empty : separator, Words.Select((word, i) => Write(word, i, nameCase)));

    private static string Write(string word, int index, NameCase nameCase) => nameCase switch
    {
        NameCase.Upper => word.ToUpperInvariant(),
        NameCase.Title or NameCase.Pascal => Capitalize(word),
        NameCase.Sentence when index == 0 => Capitalize(word),
        NameCase.Camel when index > 0 => Capitalize(word),
        _ => word,
    };

    private static string Capitalize(string word) => char.ToUpperInvariant(word[0]) + word.Substring(1);
}
