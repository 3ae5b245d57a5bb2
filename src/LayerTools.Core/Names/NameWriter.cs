using System.Globalization;
using System.Text;

namespace LayerTools.Names;

/// <summary>Writes names in a style.</summary>
/// <param name="style">The style.</param>
internal sealed class NameWriter(NamingStyle style)
{
    /// <summary>Stands between pieces that would else run together.</summary>
    private const string PlainSeparator = "_";

    private string Separator => style.Case is NameCase.Pascal or NameCase.Camel ? string.Empty : style.Separator;

    /// <summary>The name of a reading that found a part.</summary>
    /// <param name="read">The reading.</param>
    /// <param name="number">The number to write; null for none.</param>
    public string Write(ParsedName read, int? number)
    {
        var part = style.Language == NameLanguage.Japanese ? read.Part!.Japanese : read.Part!.English;
        var words = SplitWords(read.OtherParts).Concat(SplitWords(part)).Concat(SplitWords(read.Remarks)).Select(WriteWord);
        var pieces = new List<string>(words);
        if (read.Side != Side.None) pieces.Insert(style.Sides.Place == SidePlace.Start ? 0 : pieces.Count, read.Side == Side.Left ? style.Sides.Left : style.Sides.Right);
        if (number is { } n) pieces.Add(n.ToString("D" + style.NumberDigits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture));
        return Join(pieces);
    }

    private static string[] SplitWords(string text) => text.Split([' '], StringSplitOptions.RemoveEmptyEntries);

    private string Join(List<string> pieces)
    {
        var name = new StringBuilder();
        foreach (var piece in pieces)
        {
            if (name.Length > 0) name.Append(Separator.Length == 0 && RunTogether(name[name.Length - 1], piece[0]) ? PlainSeparator : Separator);
            name.Append(piece);
        }

        return name.ToString();
    }

    private static bool RunTogether(char end, char start) =>
        char.IsDigit(end) ? char.IsDigit(start) || char.IsLower(start) : (char.IsUpper(end) && char.IsUpper(start)) || ((char.IsUpper(end) || char.IsLower(end)) && char.IsLower(start));

    private string WriteWord(string word, int at) => style.Case switch
    {
        NameCase.Lower => word.ToLowerInvariant(),
        NameCase.Upper => word.ToUpperInvariant(),
        NameCase.Title => Capitalize(word),
        NameCase.Pascal => Capitalize(word.ToLowerInvariant()),
        NameCase.Camel => at == 0 ? word.ToLowerInvariant() : Capitalize(word.ToLowerInvariant()),
        _ => at == 0 ? Capitalize(word) : word,
    };

    private static string Capitalize(string word) => char.ToUpperInvariant(word[0]) + word.Substring(1);
}
