using System.Globalization;

namespace LayerTools.Names;

/// <summary>Cuts a name where a reader sees a new word begin: at joints and brackets, at a change of script, before a capital, around digits and signs.</summary>
internal static class NamePieces
{
    private const string Gaps = Folding.Joints + "()[]{}<>「」『』【】〈〉《》〔〕#\"“”";

    // "L'oeil" is an elision, "R&D" an abbreviation: these join rather than cut.
    private const string Joining = "'’ʼ&";

    private enum Script
    {
        Gap,
        Digit,
        Upper,
        Lower,
        Uncased,
        Sign,
    }

    /// <summary>The pieces in order. Signs stand alone; marks stay with what they are put on.</summary>
    /// <param name="name">A name whose widths are folded.</param>
    public static IEnumerable<(int Start, string Text)> Cut(string name)
    {
        var start = 0;
        for (var end = 1; end <= name.Length; end++)
        {
            if (end < name.Length && !IsCut(name, end)) continue;
            if (!Gaps.Contains(name[start])) yield return (start, name.Substring(start, end - start));
            start = end;
        }
    }

    private static bool IsCut(string name, int at)
    {
        if (IsMark(name[at]) || char.IsLowSurrogate(name[at]) || name[at] is '\u200D' || name[at - 1] is '\u200D') return Gaps.Contains(name[at - 1]);
        if (IsJoining(name, at) || IsJoining(name, at - 1)) return false;
        var (before, after) = (FindScript(name, at - 1), FindScript(name, at));
        if (before == Script.Upper && after == Script.Lower) return false;
        if (before == Script.Upper && after == Script.Upper) return at + 1 < name.Length && FindScript(name, at + 1) == Script.Lower;
        return before != after || before == Script.Sign;
    }

    private static bool IsJoining(string name, int at) =>
        Joining.Contains(name[at]) && at > 0 && at + 1 < name.Length && IsSpaced(name[at - 1]) && IsSpaced(name[at + 1]);

    // Letters of scripts that put spaces between words.
    private static bool IsSpaced(char c) => c < '\u2E80' && char.IsLetterOrDigit(c);

    private static Script FindScript(string name, int at)
    {
        while (at > 0 && IsMark(name[at])) at--;
        var c = name[at];
        if (Gaps.Contains(c) || char.IsWhiteSpace(c)) return Script.Gap;
        return CharUnicodeInfo.GetUnicodeCategory(c) switch
        {
            UnicodeCategory.DecimalDigitNumber when c <= '9' => Script.Digit,
            UnicodeCategory.UppercaseLetter or UnicodeCategory.TitlecaseLetter => Script.Upper,
            UnicodeCategory.LowercaseLetter => Script.Lower,
            UnicodeCategory.OtherLetter or UnicodeCategory.ModifierLetter or UnicodeCategory.LetterNumber => Script.Uncased,
            _ => Script.Sign,
        };
    }

    private static bool IsMark(char c) =>
        CharUnicodeInfo.GetUnicodeCategory(c) is UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark or UnicodeCategory.EnclosingMark;
}
