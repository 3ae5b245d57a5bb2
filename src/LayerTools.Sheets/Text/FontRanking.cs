namespace LayerTools.Sheets.Text;

/// <summary>Says which of several fonts that have a character to take, from the words in their file names.</summary>
internal static class FontRanking
{
    private static readonly string[] OddCuts =
    [
        "italic", "oblique", "thin", "extralight", "ultralight", "light", "medium", "semibold", "demi", "extrabold", "ultrabold",
        "black", "heavy", "condensed", "narrow", "mono", "display", "serif", "slab", "script", "symbol",
    ];

    /// <summary>0 and up, lower is better: an upright sans of the wanted weight first; for emoji, emoji fonts before all others.</summary>
    public static int Rate(string path, bool bold, bool emoji)
    {
        var name = Path.GetFileNameWithoutExtension(path).ToLowerInvariant();
        var isEmoji = name.Contains("emoji");
        var rating = isEmoji == emoji ? 0 : 64;
        rating += OddCuts.Count(word => name.Contains(word)) * 4;
        if (name.Contains("bold") != bold) rating += 2;
        if (!name.Contains("sans")) rating += 1;
        return rating;
    }
}
