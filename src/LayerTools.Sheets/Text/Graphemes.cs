using System.Globalization;

namespace LayerTools.Sheets.Text;

/// <summary>Takes text apart into what a reader sees as single characters.</summary>
internal static class Graphemes
{
    private const int ZeroWidthJoiner = 0x200D;

    public static IReadOnlyList<string> Split(string text)
    {
        var clusters = new List<string>();
        var elements = StringInfo.GetTextElementEnumerator(text);
        while (elements.MoveNext())
        {
            var element = elements.GetTextElement();
            // Older frameworks end an element before joiners, skin tones and the second half of a flag.
            if (clusters.Count > 0 && Belongs(clusters[clusters.Count - 1], element)) clusters[clusters.Count - 1] += element;
            else clusters.Add(element);
        }

        return clusters;
    }

    /// <summary>The code points of well-formed text; a lone surrogate stands for itself.</summary>
    public static IEnumerable<int> CodePoints(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsSurrogatePair(text, i)) yield return char.ConvertToUtf32(text, i++);
            else yield return text[i];
        }
    }

    private static bool Belongs(string before, string element)
    {
        var first = CodePoints(element).First();
        if (first is ZeroWidthJoiner or >= 0xFE00 and <= 0xFE0F or >= 0x1F3FB and <= 0x1F3FF or >= 0xE0020 and <= 0xE007F) return true;
        if (before[before.Length - 1] == ZeroWidthJoiner && IsPictograph(first)) return true;
        return IsRegional(first) && IsRegional(CodePoints(before).First()) && CodePoints(before).Count() == 1;
    }

    private static bool IsPictograph(int point) => point is >= 0x2190 and <= 0x2BFF or >= 0x1F000 and <= 0x1FAFF;

    private static bool IsRegional(int point) => point is >= 0x1F1E6 and <= 0x1F1FF;
}
