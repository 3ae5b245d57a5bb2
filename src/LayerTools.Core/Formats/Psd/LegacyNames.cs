using System.Text;

namespace LayerTools.Formats.Psd;

/// <summary>The short names of a file: in the code page of the machine that wrote it, which the file does not name and which is found by comparing them with the Unicode names.</summary>
internal sealed class LegacyNames
{
    private const int LongestPascalString = 255;
    private const int LongestOldName = 31;
    private const int Utf8 = 65001;

    /// <summary>The code pages tried, in this order: Roman (two kinds), Japanese, UTF-8, Chinese (two), Korean, Cyrillic.</summary>
    private static readonly Encoding[] Candidates = [.. new[] { 10000, 1252, 932, Utf8, 936, 950, 949, 1251 }.Select(Open)];

    private readonly Encoding encoding;
    private readonly int longest;
    private readonly bool isCertain;

    private LegacyNames(Encoding encoding, int longest, bool isCertain)
    {
        this.encoding = encoding;
        this.longest = longest;
        this.isCertain = isCertain;
    }

    /// <summary>Finds the code page that explains most of the names that are not plain ASCII.</summary>
    public static LegacyNames Infer(IReadOnlyCollection<(byte[] Legacy, string Unicode)> pairs)
    {
        var longest = pairs.Any(pair => pair.Legacy.Length == LongestOldName && pair.Unicode.Length > LongestOldName) && pairs.All(pair => pair.Legacy.Length <= LongestOldName)
            ? LongestOldName
            : LongestPascalString;
        var telling = pairs.Where(pair => pair.Unicode.Any(character => character > 127)).ToList();
        var (best, matches) = (Candidates[0], 0);
        foreach (var candidate in telling.Count == 0 ? [] : Candidates)
        {
            var names = new LegacyNames(candidate, longest, false);
            var count = telling.Count(pair => names.Encode(pair.Unicode).AsSpan().SequenceEqual(pair.Legacy));
            if (count > matches) (best, matches) = (candidate, count);
        }

        return new LegacyNames(best, longest, matches > 0);
    }

    /// <summary>Whether the short name, written anew, would be the stored one.</summary>
    public bool Explains(ReadOnlySpan<byte> legacy, string name) => Encode(name).AsSpan().SequenceEqual(legacy);

    /// <summary>Whether the short name can say the whole name, so that no Unicode name is needed.</summary>
    public bool CanSay(string name) => Decode(Encode(name)) == name;

    /// <summary>A name that needs no code page; null if it does.</summary>
    public static string? TryDecodeAscii(byte[] legacy) => Array.TrueForAll(legacy, value => value < 128) ? Encoding.ASCII.GetString(legacy) : null;

    public string Decode(byte[] legacy)
    {
        if (TryDecodeAscii(legacy) is { } ascii) return ascii;
        if (isCertain) return encoding.GetString(legacy);
        try
        {
            return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(legacy);
        }
        catch (DecoderFallbackException)
        {
            return encoding.GetString(legacy);
        }
    }

    /// <summary>The short name: what the code page lacks becomes '?', and what is too long is cut.</summary>
    public byte[] Encode(string name)
    {
        var bytes = encoding.GetBytes(name);
        return bytes.Length <= longest ? bytes : bytes.AsSpan(0, longest).ToArray();
    }

    private static Encoding Open(int codePage) => codePage == Utf8
        ? new UTF8Encoding(false)
        : CodePagesEncodingProvider.Instance.GetEncoding(codePage, new EncoderReplacementFallback("?"), DecoderFallback.ReplacementFallback)!;
}
