using System.Globalization;
using System.Text;

namespace LayerTools.Sheets.Text;

/// <summary>Makes any text fit for one line of a page.</summary>
internal static class SafeText
{
    private const char Replacement = '\uFFFD';
    private const int MarksPerCluster = 4;

    /// <summary>
    /// Controls, line ends, direction overrides, lone surrogates and other invisible commands become U+FFFD, so that the reader sees
    /// that something is there and the page keeps its lines; joiners and variation selectors stay, since scripts and emoji need them.
    /// A cluster keeps four combining marks, since taller piles would grow into the neighbouring lines.
    /// </summary>
    public static string Clean(string text)
    {
        var clean = new StringBuilder(text.Length);
        var marks = 0;
        for (var i = 0; i < text.Length; i++)
        {
            var isPair = char.IsSurrogatePair(text, i);
            var category = CharUnicodeInfo.GetUnicodeCategory(text, i);
            marks = category is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark ? marks + 1 : 0;
            if (IsCommand(isPair ? char.ConvertToUtf32(text, i) : text[i], category)) clean.Append(Replacement);
            else if (marks <= MarksPerCluster) clean.Append(text, i, isPair ? 2 : 1);
            if (isPair) i++;
        }

        return clean.ToString();
    }

    private static bool IsCommand(int point, UnicodeCategory category) => category switch
    {
        UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator or UnicodeCategory.Surrogate => true,
        UnicodeCategory.Format => point is not (0x200C or 0x200D or 0x00AD or (>= 0xE0020 and <= 0xE007F)),
        _ => false,
    };
}
