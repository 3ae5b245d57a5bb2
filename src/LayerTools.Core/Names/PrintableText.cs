using System.Text;

namespace LayerTools.Names;

/// <summary>Names from files as they can be shown: nothing in them steers a terminal or turns the text around it.</summary>
public static class PrintableText
{
    private const char Delete = '\u007F';
    private const char FirstControlPicture = '\u2400';
    private const char DeletePicture = '\u2421';

    /// <summary>Control characters become their visible signs (Unicode block 'Control Pictures'); C1 controls and characters that override the direction of text become U+FFFD.</summary>
    /// <param name="text">The text; null gives an empty one.</param>
    public static string Of(string? text)
    {
        if (text is null) return string.Empty;
        var index = 0;
        while (index < text.Length && Show(text[index]) == text[index]) index++;
        if (index == text.Length) return text;
        var shown = new StringBuilder(text.Length).Append(text, 0, index);
        for (; index < text.Length; index++) shown.Append(Show(text[index]));
        return shown.ToString();
    }

    /// <summary>Whether a character is shown as it is.</summary>
    internal static bool IsPrintable(char character) => Show(character) == character;

    private static char Show(char character) => character switch
    {
        < ' ' => (char)(FirstControlPicture + character),
        Delete => DeletePicture,
        (>= '\u0080' and <= '\u009F') or '\u2028' or '\u2029' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069') => '\uFFFD',
        _ => character,
    };
}
