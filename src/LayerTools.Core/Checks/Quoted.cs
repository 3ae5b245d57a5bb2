using System.Globalization;
using System.Text;
using LayerTools.Names;

namespace LayerTools.Checks;

/// <summary>Text from files as one argument of a PowerShell command that somebody may paste: nothing in it can end the string, run, break the line or turn the text around it.</summary>
internal static class Quoted
{
    // PowerShell takes typographic quotes for plain ones ('about_Quoting_Rules').
    private const string SingleQuotes = "'\u2018\u2019\u201A\u201B";
    private const string Special = "`$\"\u201C\u201D\u201E";

    /// <summary>The text in single quotes; in double quotes, with each odd character as its number, where it holds some that cannot be seen.</summary>
    public static string Of(string text)
    {
        var single = new StringBuilder("'", text.Length + 2);
        var @double = new StringBuilder("\"", text.Length + 2);
        var isPlain = true;
        for (var i = 0; i < text.Length; i++)
        {
            var character = text[i];
            if (char.IsHighSurrogate(character) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
            {
                single.Append(text, i, 2);
                @double.Append(text, i++, 2);
                continue;
            }

            single.Append(character, SingleQuotes.Contains(character) ? 2 : 1);
            if (Special.Contains(character)) @double.Append('`');
            if (PrintableText.IsPrintable(character) && !char.IsSurrogate(character))
            {
                @double.Append(character);
            }
            else
            {
                isPlain = false;
                @double.Append("$([char]0x").Append(((int)character).ToString("X", CultureInfo.InvariantCulture)).Append(')');
            }
        }

        return isPlain ? single.Append('\'').ToString() : @double.Append('"').ToString();
    }
}
