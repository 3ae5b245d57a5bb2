using System.Globalization;

namespace LayerTools.Names;

/// <summary>A piece of a name that says a side.</summary>
/// <param name="Start">Index of its first UTF-16 unit.</param>
/// <param name="Text">The token as written.</param>
/// <param name="OppositeText">The opposite token in the same style.</param>
/// <param name="Side">The side it says.</param>
internal sealed record SideToken(int Start, string Text, string OppositeText, Side Side)
{
    // Words come before letters, so that "Left" is not read as "L".
    private static readonly (string Left, string Right)[] Pairs =
    [
        ("left", "right"), ("Left", "Right"), ("LEFT", "RIGHT"), ("左", "右"), ("L", "R"), ("l", "r"), ("Ｌ", "Ｒ"), ("ｌ", "ｒ"),
    ];

    // "L'oeil" is an elision, "R&D" an abbreviation, "Left’s" one word: these join rather than delimit.
    private const string Joining = "'’ʼ＇&＆";

    public int End => Start + Text.Length;

    private bool IsIdeograph => Text is "左" or "右";

    private bool IsSingleLetter => Text.Length == 1 && !IsIdeograph;

    /// <summary>All tokens of a name that are set off from what is around them, in order.</summary>
    public static List<SideToken> FindAll(string name)
    {
        var tokens = new List<SideToken>();
        for (var i = 0; i < name.Length; i++)
        {
            if (TryFind(name, i) is not { } token) continue;
            tokens.Add(token);
            i = token.End - 1;
        }

        return tokens;
    }

    private static SideToken? TryFind(string name, int start)
    {
        foreach (var (left, right) in Pairs)
        {
            var token = StartsAt(name, start, left) ? new SideToken(start, left, right, Side.Left)
                : StartsAt(name, start, right) ? new SideToken(start, right, left, Side.Right) : null;
            if (token is not null && (token.IsIdeograph || (token.BeginsIn(name) && token.EndsIn(name)))) return token;
        }

        return null;
    }

    private static bool StartsAt(string name, int start, string text) => string.CompareOrdinal(name, start, text, 0, text.Length) == 0;

    private bool BeginsIn(string name)
    {
        var before = Start - 1;
        while (before >= 0 && IsMark(name[before])) before--;
        if (before < 0) return true;
        var startsUpper = char.IsUpper(Text[0]);
        var previous = name[before];
        if (char.IsLower(previous)) return startsUpper;
        if (char.IsDigit(previous)) return startsUpper || !IsSingleLetter;
        if (IsUpper(previous)) return startsUpper && char.IsLower(Text[Text.Length - 1]);
        return !Joining.Contains(previous);
    }

    private bool EndsIn(string name)
    {
        if (End == name.Length) return true;
        var next = name[End];
        if (char.IsLower(next) || IsMark(next) || Joining.Contains(next)) return false;

        // "L2" alone may be a level or a line; after something else it is the second left one.
        if (char.IsDigit(next)) return !IsSingleLetter || Start > 0;
        if (!IsUpper(next)) return true;
        var isWordInLowerCase = !IsSingleLetter && char.IsLower(Text[Text.Length - 1]);
        return isWordInLowerCase || (End + 1 < name.Length && char.IsLower(name[End + 1]));
    }

    private static bool IsUpper(char c) => char.IsUpper(c) || char.GetUnicodeCategory(c) == UnicodeCategory.TitlecaseLetter;

    private static bool IsMark(char c) => char.GetUnicodeCategory(c) is UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark or UnicodeCategory.EnclosingMark;
}
