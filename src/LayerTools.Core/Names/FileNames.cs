using System.Globalization;
using System.Text;

namespace LayerTools.Names;

/// <summary>Makes file names of layer names: usable on Windows, macOS and Linux, and as close to the layer's name as these allow.</summary>
internal static class FileNames
{
    /// <summary>Most bytes of UTF-8. Systems take 255 with extension; the rest is room for numbers, temporary names and long folders.</summary>
    public const int LongestBytes = 120;

    private const char Substitute = '_';
    private const string Nameless = "unnamed";

    /// <summary>What no file name on Windows may hold; the other systems forbid less.</summary>
    private const string Forbidden = "<>:\"/\\|?*";

    private static readonly HashSet<string> Devices = new(
        [
            "CON", "PRN", "AUX", "NUL", "CONIN$", "CONOUT$", "CLOCK$",
            .. "0123456789\u00B9\u00B2\u00B3".SelectMany(digit => new[] { $"COM{digit}", $"LPT{digit}" }),
        ],
        StringComparer.OrdinalIgnoreCase);

    /// <summary>A file name without its extension.</summary>
    public static string MakeSafe(string name)
    {
        var safe = new StringBuilder(name.Length);
        for (var i = 0; i < name.Length; i++)
        {
            var isPair = char.IsHighSurrogate(name[i]) && i + 1 < name.Length && char.IsLowSurrogate(name[i + 1]);
            if (isPair) safe.Append(name[i++]).Append(name[i]);
            else safe.Append(IsUsable(name[i]) ? name[i] : Substitute);
        }

        var text = Trim(Cut(Trim(safe.ToString())));
        if (text.Length == 0) return Nameless;
        // Windows takes a device's name for the device whatever extension follows; other systems hide what begins with a dot.
        return text[0] == '.' || Devices.Contains(text.Split('.')[0].TrimEnd()) ? Substitute + text : text;
    }

    /// <summary>What two names must not share: some disks tell neither upper from lower case nor composed from decomposed letters.</summary>
    public static string ToKey(string safeName) => safeName.Normalize(NormalizationForm.FormC).ToUpperInvariant();

    private static bool IsUsable(char character) =>
        Forbidden.IndexOf(character) < 0 && char.GetUnicodeCategory(character) is not (UnicodeCategory.Control or UnicodeCategory.Surrogate or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator)
        && PrintableText.Of(character.ToString())[0] == character && character is not ('\uFFFE' or '\uFFFF');

    private static string Trim(string text) => text.TrimStart().TrimEnd(' ', '.', '\u3000', '\u00A0');

    /// <summary>Cuts between what readers see as characters.</summary>
    private static string Cut(string text)
    {
        if (Encoding.UTF8.GetByteCount(text) <= LongestBytes) return text;
        var kept = 0;
        var bytes = 0;
        var elements = StringInfo.GetTextElementEnumerator(text);
        while (elements.MoveNext())
        {
            var element = elements.GetTextElement();
            bytes += Encoding.UTF8.GetByteCount(element);
            if (bytes > LongestBytes) break;
            kept = elements.ElementIndex + element.Length;
        }

        return text.Substring(0, kept);
    }
}
