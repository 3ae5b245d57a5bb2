namespace LayerTools.Sheets.Text;

/// <summary>Shortens text in its middle, since the start and the end of a layer's name tell the most.</summary>
internal static class MiddleShortener
{
    private const string Ellipsis = "\u2026";

    /// <summary>The text itself if it fits, else as many whole characters from both ends as fit.</summary>
    public static string Fit(string text, TextStyle style, double width, ITextRuler ruler)
    {
        if (ruler.Measure(text, style) <= width) return text;
        var clusters = Graphemes.Split(text);
        var (fits, tooMany) = (0, clusters.Count);
        while (tooMany - fits > 1)
        {
            var kept = fits + (tooMany - fits) / 2;
            if (ruler.Measure(Keep(clusters, kept), style) <= width) fits = kept;
            else tooMany = kept;
        }

        return Keep(clusters, fits);
    }

    private static string Keep(IReadOnlyList<string> clusters, int kept)
    {
        var head = (kept + 1) / 2;
        return string.Concat(clusters.Take(head)).TrimEnd() + Ellipsis + string.Concat(clusters.Skip(clusters.Count - (kept - head))).TrimStart();
    }
}
