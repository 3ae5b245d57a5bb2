using SkiaSharp;

namespace LayerTools.Sheets.Text;

/// <summary>The shipped typefaces, and those of the machine for characters the shipped ones lack.</summary>
/// <remarks>
/// Bytes are handed to the drawing library and never streams: its calls back into managed streams are set up once for a whole process, so
/// a second copy of the library's wrapper, brought by another module, would get the calls meant for this one.
/// </remarks>
internal sealed class FontLibrary : IDisposable
{
    private readonly Lazy<IReadOnlyList<string>> files;
    private readonly Dictionary<string, SKFont?> opened = new(StringComparer.Ordinal);
    private readonly Dictionary<(bool Bold, bool Emoji), IReadOnlyList<string>> ranked = [];
    private readonly Dictionary<(string Cluster, bool Bold), SKTypeface> chosen = [];
    private readonly SKFont regular = new(LoadShipped("NotoSans-Regular.ttf"));
    private readonly SKFont bold = new(LoadShipped("NotoSans-Bold.ttf"));

    private string? missing;

    /// <param name="listFiles">Gives the font files of the machine; asked only when a character needs them.</param>
    public FontLibrary(Func<IReadOnlyList<string>> listFiles) => files = new Lazy<IReadOnlyList<string>>(listFiles);

    public SKTypeface GetShipped(bool isBold) => (isBold ? bold : regular).Typeface;

    /// <summary>A typeface that has all characters of a cluster; the shipped one if none has, which then shows its sign for a missing character.</summary>
    public SKTypeface Choose(string cluster, bool isBold)
    {
        if (chosen.TryGetValue((cluster, isBold), out var known)) return known;
        var needed = Graphemes.CodePoints(cluster).Where(point => !IsInvisible(point)).ToArray();
        var found = Find(needed, isBold, IsEmoji(cluster));
        if (found is null) missing ??= cluster;
        var typeface = found ?? GetShipped(isBold);
        chosen.Add((cluster, isBold), typeface);
        return typeface;
    }

    /// <summary>What to tell, as sentences, about characters that no font has; null if all were found.</summary>
    public string? FindMissing() => missing is null ? null
        : FormattableString.Invariant($"No font on this machine has the character '{missing}' (U+{Graphemes.CodePoints(missing).First():X4}), which is shown as a box. Install a font that has it; Noto has fonts for all scripts (on Debian: fonts-noto-core, fonts-noto-cjk).");

    public void Dispose()
    {
        foreach (var font in opened.Values.Append(regular).Append(bold))
        {
            font?.Typeface.Dispose();
            font?.Dispose();
        }
    }

    private SKTypeface? Find(int[] needed, bool isBold, bool emoji)
    {
        var shipped = isBold ? bold : regular;
        if (!emoji && Has(shipped, needed)) return shipped.Typeface;
        foreach (var path in Rank(isBold, emoji))
        {
            if (Open(path) is { } font && Has(font, needed)) return font.Typeface;
        }

        // A cluster that no single font has whole is still better read from a font that has its first character.
        return needed.Length > 1 ? Find([needed[0]], isBold, emoji) : Has(shipped, needed) ? shipped.Typeface : null;
    }

    private IReadOnlyList<string> Rank(bool isBold, bool emoji)
    {
        if (!ranked.TryGetValue((isBold, emoji), out var paths))
        {
            paths = files.Value.OrderBy(path => FontRanking.Rate(path, isBold, emoji)).ToList();
            ranked.Add((isBold, emoji), paths);
        }

        return paths;
    }

    private SKFont? Open(string path)
    {
        if (!opened.TryGetValue(path, out var font))
        {
            font = SKTypeface.FromFile(path) is { } typeface ? new SKFont(typeface) : null;
            opened.Add(path, font);
        }

        return font;
    }

    private static bool Has(SKFont font, int[] points) => Array.TrueForAll(points, point => font.ContainsGlyph(point));

    private static bool IsInvisible(int point) => point is 0x200C or 0x200D or 0x00AD or (>= 0xFE00 and <= 0xFE0F) or (>= 0xE0020 and <= 0xE007F) or (>= 0xE0100 and <= 0xE01EF);

    // Characters with a picture of their own, and those asked to be shown as one (Unicode Technical Standard #51).
    private static bool IsEmoji(string cluster) => cluster.Any(unit => unit == '\uFE0F') || Graphemes.CodePoints(cluster).First() is >= 0x1F000 and <= 0x1FAFF;

    private static SKTypeface LoadShipped(string name)
    {
        using var stream = typeof(FontLibrary).Assembly.GetManifestResourceStream($"Fonts/{name}")!;
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        using var data = SKData.CreateCopy(bytes.ToArray());
        return SKTypeface.FromData(data);
    }
}
