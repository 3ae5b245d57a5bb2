namespace LayerTools.Sheets.Text;

/// <summary>Breaks a sentence into lines at its spaces.</summary>
internal static class LineBreaker
{
    /// <summary>At most <paramref name="limit"/> lines; what is left over is left out and marked by an ellipsis.</summary>
    public static IReadOnlyList<string> Break(string text, TextStyle style, double width, int limit, ITextRuler ruler)
    {
        var lines = new List<string>();
        var line = string.Empty;
        foreach (var word in text.Split(' ').Where(word => word.Length > 0))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && ruler.Measure(longer, style) > width)
            {
                lines.Add(line);
                longer = word;
            }

            line = longer;
        }

        if (line.Length > 0) lines.Add(line);
        var shown = lines.Take(limit).ToList();
        if (lines.Count > limit) shown[limit - 1] += "\u2026";
        return shown.ConvertAll(shownLine => MiddleShortener.Fit(shownLine, style, width, ruler));
    }
}
