using System.Text;

namespace LayerTools.Images;

/// <summary>Text as every program can read it: half of a surrogate pair, which a file's names can hold, cannot be written as UTF-8.</summary>
internal static class WellFormed
{
    private const char Replacement = '\uFFFD';

    /// <summary>The text with U+FFFD for each half of a pair that stands alone.</summary>
    public static string Of(string text)
    {
        StringBuilder? changed = null;
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsHighSurrogate(text[i]) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1])) i++;
            else if (char.IsSurrogate(text[i])) (changed ??= new StringBuilder(text))[i] = Replacement;
        }

        return changed?.ToString() ?? text;
    }
}
