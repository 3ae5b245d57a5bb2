using System.Text;
using System.Text.RegularExpressions;

namespace LayerTools.Names;

/// <summary>
/// A layer name taken apart into the token that says the side and the rest.
/// <para>A token is <c>L</c>, <c>R</c>, <c>left</c>, <c>right</c> (lower case, upper case, or <c>Left</c>), full-width <c>Ｌ</c> and <c>Ｒ</c>, or
/// <c>左</c> and <c>右</c>, at the start or at the end of the name. It is set off by a delimiter, by brackets, by camel case
/// (<c>LeftArm</c>, <c>LArm</c>, <c>armL</c>) or by a change of script (<c>腕L</c>); <c>左</c> and <c>右</c> need nothing.</para>
/// <para>Numbers and notes in brackets before a leading token do not hide it, nor do numbers, notes, versions (<c>v2</c>) and words for a copy after
/// a trailing one: <c>01_L_Arm</c>, <c>Finger_L_01</c>, <c>Eye L2</c>, <c>Arm L copy 2</c>, <c>Arm L [OK]</c> have a side. Text of any other kind
/// does: <c>Arm_L_upper</c> has none.</para>
/// <para>Where several tokens agree (<c>左腕 L</c>) they count as one. A name that says both sides has none.</para>
/// </summary>
public sealed class SideName
{
    private const string Joints = " _-.:,;~+|/\\　＿－．・：、〜";
    private const string Brackets = "()[]{}<>（）［］｛｝【】「」『』〈〉《》";

    // Each piece is taken or left as a whole, so that no name makes the search long.
    private const string Note = @"[(\[{<（［｛【「『〈《][^()\[\]{}<>（）［］｛｝【】「」『』〈〉《》]*[)\]}>）］｝】」』〉》]";
    private const string Extra = Note + @"|v\d|copy|kopie|copie|copia|コピー|のコピー|の複製|複製|拷贝|副本|복사|\P{L}";
    private static readonly Regex OnlyExtras = new($@"\G(?>{Extra})*\z", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase);
    private static readonly Regex OnlyNotes = new($@"\A(?>{Note}|\P{{L}})*\z", RegexOptions.CultureInvariant);

    private readonly string name;
    private readonly IReadOnlyList<SideToken> tokens;

    private SideName(string name, IReadOnlyList<SideToken> tokens)
    {
        this.name = name;
        this.tokens = tokens;
        Side = tokens.Count == 0 ? Side.None : tokens[0].Side;
        BaseName = tokens.Count == 0 ? name : RemoveTokens();
    }

    /// <summary>The side the name says.</summary>
    public Side Side { get; }

    /// <summary>The name less its side token and the delimiter or brackets that went with it; empty for a name that only says a side. A name without a side stays as it is.</summary>
    public string BaseName { get; }

    /// <summary>Takes a name apart.</summary>
    public static SideName Parse(string name)
    {
        var tokens = SideToken.FindAll(name);
        var isSided = tokens.Count > 0 && tokens.All(token => token.Side == tokens[0].Side) && (IsAtStart(name, tokens[0]) || IsAtEnd(name, tokens[tokens.Count - 1]));
        return new SideName(name, isSided ? tokens : []);
    }

    /// <summary>The name for the opposite side in the same style, case and place; a name without a side stays as it is. Swapping twice gives the name back.</summary>
    public static string Swap(string name) => Parse(name).SwapSide();

    /// <summary>This name for the opposite side, see <see cref="Swap"/>.</summary>
    public string SwapSide()
    {
        var swapped = new StringBuilder(name.Length + tokens.Count);
        var end = 0;
        foreach (var token in tokens)
        {
            swapped.Append(name, end, token.Start - end).Append(token.OppositeText);
            end = token.End;
        }

        return swapped.Append(name, end, name.Length - end).ToString();
    }

    private static bool IsAtStart(string name, SideToken first) => OnlyNotes.Match(name, 0, first.Start).Success;

    private static bool IsAtEnd(string name, SideToken last) => OnlyExtras.IsMatch(name, last.End);

    private string RemoveTokens()
    {
        var rest = name;
        for (var i = tokens.Count - 1; i >= 0; i--)
        {
            var (start, end) = WithBrackets(rest, tokens[i].Start, tokens[i].End);
            if (start == 0)
            {
                while (end < rest.Length && Joints.Contains(rest[end])) end++;
            }
            else if (end == rest.Length || !char.IsDigit(rest[end]))
            {
                // In "Finger_L_01" one of the two delimiters stays; in "Eye L2" the only one does.
                while (start > 0 && Joints.Contains(rest[start - 1])) start--;
            }

            rest = rest.Remove(start, end - start);
        }

        return rest.Trim();
    }

    private static (int Start, int End) WithBrackets(string text, int start, int end)
    {
        while (start > 0 && end < text.Length && Brackets.IndexOf(text[start - 1]) is var opening and >= 0 && opening % 2 == 0 && text[end] == Brackets[opening + 1])
        {
            (start, end) = (start - 1, end + 1);
        }

        return (start, end);
    }
}
