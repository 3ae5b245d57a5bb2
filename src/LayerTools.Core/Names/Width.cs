using System.Text;

namespace LayerTools.Names;

/// <summary>Full and half width: Latin letters, digits and signs become half, kana full width. Kana whose sound mark stands apart become one character.</summary>
internal static class Width
{
    // U+FF66 to U+FF9D in their order.
    private const string FullKana = "ヲァィゥェォャュョッーアイウエオカキクケコサシスセソタチツテトナニヌネノハヒフヘホマミムメモヤユヨラリルレロワン";
    private const string Voiceable = "カキクケコサシスセソタチツテトハヒフヘホかきくけこさしすせそたちつてとはひふへほ";
    private const string HalfVoiceable = "ハヒフヘホはひふへほ";

    /// <summary>The text in its usual widths.</summary>
    public static string Fold(string text)
    {
        var folded = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            if (c is 'ﾞ' or '\u3099' && Follows(folded, Voiceable)) folded[folded.Length - 1]++;
            else if (c is 'ﾟ' or '\u309A' && Follows(folded, HalfVoiceable)) folded[folded.Length - 1] += (char)2;
            else if (c is 'ﾞ' or '\u3099' && Follows(folded, "ウう")) folded[folded.Length - 1] += (char)(folded[folded.Length - 1] == 'ウ' ? 'ヴ' - 'ウ' : 'ゔ' - 'う');
            else if (c is >= '①' and <= '⑳') folded.Append(c - '①' + 1);
            else folded.Append(Fold(c));
        }

        return folded.ToString();
    }

    private static bool Follows(StringBuilder text, string bases) => text.Length > 0 && bases.Contains(text[text.Length - 1]);

    private static char Fold(char c) => c switch
    {
        >= '！' and <= '～' => (char)(c - '！' + '!'),
        '　' or '\u00A0' => ' ',
        '･' => '・',
        '｢' => '「',
        '｣' => '」',
        >= 'ｦ' and <= 'ﾝ' => FullKana[c - 'ｦ'],
        _ => c,
    };
}
