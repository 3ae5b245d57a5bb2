using System.Globalization;

namespace LayerTools.Names;

/// <summary>Names without what nobody sees at their ends.</summary>
internal static class TrimmedName
{
    /// <summary>The name without white space of any width, control characters and signs without a shape, such as U+200B and U+FEFF, at its ends.</summary>
    public static string Of(string name)
    {
        var (start, end) = (0, name.Length);
        while (start < end && IsUnseen(name[start])) start++;
        while (end > start && IsUnseen(name[end - 1])) end--;
        return name.Substring(start, end - start);
    }

    private static bool IsUnseen(char character) =>
        char.IsWhiteSpace(character) || char.GetUnicodeCategory(character) is UnicodeCategory.Control or UnicodeCategory.Format;
}
