using LayerTools.Checks;

namespace LayerTools.Sheets.Reports;

/// <summary>How many findings of each severity there are.</summary>
internal readonly record struct SeverityCounts(int Errors, int Warnings, int Notes)
{
    public int Total => Errors + Warnings + Notes;

    /// <summary>A number that sorts by errors, then warnings, then notes.</summary>
    public long Rank => (((Errors * 1_000_000L) + Warnings) * 1_000_000L) + Notes;

    public static SeverityCounts Of(IEnumerable<Finding> findings)
    {
        var counts = new int[(int)Severity.Error + 1];
        foreach (var finding in findings) counts[(int)finding.Severity]++;
        return new SeverityCounts(counts[(int)Severity.Error], counts[(int)Severity.Warning], counts[(int)Severity.Note]);
    }

    /// <summary>Writes the counts in words, each with its shape; "none" where there is none.</summary>
    public void Write(HtmlWriter html)
    {
        if (Total == 0)
        {
            ReportSign.None.Write(html, "none");
            return;
        }

        html.Markup("<ul class=\"counts\">");
        foreach (var (count, severity) in new[] { (Errors, Severity.Error), (Warnings, Severity.Warning), (Notes, Severity.Note) })
        {
            if (count == 0) continue;
            html.Markup("<li>");
            ReportSign.Of(severity).Write(html, ReportWords.Count(count, ReportWords.Of(severity)));
            html.Markup("</li>");
        }

        html.Markup("</ul>");
    }
}
