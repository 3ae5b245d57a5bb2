using System.Globalization;

namespace LayerTools.Text;

/// <summary>How many columns of a terminal a text takes: East Asian wide signs and emoji take two, combining signs none.</summary>
internal static class TextWidth
{
    // Wide and fullwidth ranges of Unicode Standard Annex #11, in blocks.
    private static readonly (int First, int Last)[] Wide =
    [
        (0x1100, 0x115F), (0x2E80, 0x303E), (0x3041, 0x33FF), (0x3400, 0x4DBF), (0x4E00, 0x9FFF), (0xA000, 0xA4CF), (0xA960, 0xA97F), (0xAC00, 0xD7A3),
        (0xF900, 0xFAFF), (0xFE30, 0xFE6F), (0xFF00, 0xFF60), (0xFFE0, 0xFFE6), (0x1F300, 0x1F64F), (0x1F680, 0x1F6FF), (0x1F900, 0x1F9FF), (0x1FA70, 0x1FAFF), (0x20000, 0x3FFFD),
    ];

    public static int Measure(string text)
    {
        var width = 0;
        for (var i = 0; i < text.Length; i++)
        {
            var isPair = char.IsSurrogatePair(text, i);
            var category = CharUnicodeInfo.GetUnicodeCategory(text, i);
            width += MeasureRune(isPair ? char.ConvertToUtf32(text, i) : text[i], category);
            if (isPair) i++;
        }

        return width;
    }

    private static int MeasureRune(int rune, UnicodeCategory category) => category switch
    {
        UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format => 0,
        _ => Array.Exists(Wide, range => rune >= range.First && rune <= range.Last) ? 2 : 1,
    };
}
