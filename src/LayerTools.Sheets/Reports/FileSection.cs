using LayerTools.Checks;

namespace LayerTools.Sheets.Reports;

/// <summary>All that a report says of one file, to be put into a details element.</summary>
internal static class FileSection
{
    public static void Write(HtmlWriter html, FileReading reading, string id, ReportOptions options)
    {
        WriteSummary(html, reading.File.Name, ReportWords.Facts(reading.File));
        html.Markup("<div class=\"about\">");
        if (reading.Picture is { } picture) picture.Write(html, "The whole figure");
        html.Markup("<dl>");
        WriteFact(html, "Parts", reading.Sum?.Parts.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "not known");
        WriteFact(html, "Done", reading.Sum is { HasMarks: false, Done: null } ? "not known, since no layer carries a mark" : ReportWords.Done(reading.Sum));
        if (reading.Sum is { MissingOpposites: > 0 } sum) WriteFact(html, "Without the other side", ReportWords.Count(sum.MissingOpposites, "part"));
        if (reading.Findings is { } findings) WriteFact(html, "Findings", value => SeverityCounts.Of(findings).Write(value));
        if (reading.NotDrawn.Count > 0) WriteFact(html, "Not in the pictures", string.Join("; ", reading.NotDrawn));
        html.Markup("</dl></div>\n");
        WriteProblems(html, [.. reading.File.Warnings.Select(warning => $"Odd, but harmless: {warning}"), .. reading.Problems]);
        WriteFindings(html, reading, id, options);
        ChangeTable.Write(html, reading, id);
        MeasureTables.Write(html, reading);
        html.Markup("<h4>Layers</h4>\n");
        LayerTable.Write(html, reading, id);
        WriteEnd(html);
    }

    public static void WriteFailure(HtmlWriter html, string name, string problem)
    {
        WriteSummary(html, name, "could not be read");
        html.Markup("<div class=\"trouble\">");
        ReportSign.Error.Write(html, "This file could not be read.");
        html.Element("p class=\"fact\"", problem).Markup("</div>\n");
        WriteEnd(html);
    }

    private static void WriteSummary(HtmlWriter html, string name, string facts) =>
        html.Markup("<summary><h3>").Name(name).Markup("</h3> ").Element("span class=\"facts\"", facts).Markup("</summary>\n");

    private static void WriteEnd(HtmlWriter html) => html.Markup("<p class=\"back\"><a href=\"#overview\">Back to the overview</a></p>\n");

    private static void WriteFact(HtmlWriter html, string term, string value) => WriteFact(html, term, target => target.Text(value));

    private static void WriteFact(HtmlWriter html, string term, Action<HtmlWriter> value)
    {
        html.Markup("<div>").Element("dt", term).Markup("<dd>");
        value(html);
        html.Markup("</dd></div>");
    }

    private static void WriteProblems(HtmlWriter html, IReadOnlyList<string> problems)
    {
        if (problems.Count == 0) return;
        html.Markup("<div class=\"trouble\"><h4>What could not be told</h4><ul>");
        foreach (var problem in problems) html.Element("li class=\"fact\"", problem);
        html.Markup("</ul></div>\n");
    }

    private static void WriteFindings(HtmlWriter html, FileReading reading, string id, ReportOptions options)
    {
        if (reading.Findings is not { } findings) return;
        html.Markup("<h4>Findings</h4>\n");
        if (findings.Count == 0)
        {
            html.Element("p", "None.");
            return;
        }

        var table = options.WithRemedies ? new ReportTable("Findings", "Severity", "Finding", "Layer", "Rule", "What to do") : new ReportTable("Findings", "Severity", "Finding", "Layer", "Rule");
        foreach (var finding in findings)
        {
            var cells = new List<ReportCell>
            {
                new(target => ReportSign.Of(finding.Severity).Write(target, ReportWords.Of(finding.Severity)), ReportCell.Sortable(-(int)finding.Severity)),
                new(target => WriteFinding(target, finding)),
                new(target => WriteLayer(target, finding, id), ReportCell.Sortable(finding.LayerNumber ?? 0)),
                ReportCell.Text(finding.Rule),
            };
            if (options.WithRemedies) cells.Add(ReportCell.Text(finding.Remedy));
            table.Add([.. cells]);
        }

        table.Write(html, naming: 1);
    }

    private static void WriteFinding(HtmlWriter html, Finding finding)
    {
        html.Text(finding.Message);
        var sizes = string.Join("; ", new[] { finding.Measured is { } measured ? $"measured: {measured}" : null, finding.Limit is { } limit ? $"wanted: {limit}" : null }.Where(words => words is not null));
        if (sizes.Length > 0) html.Element("small", sizes);
    }

    private static void WriteLayer(HtmlWriter html, Finding finding, string id)
    {
        if (finding is { LayerPath: { } path, LayerNumber: { } number }) html.Markup(FormattableString.Invariant($"<a href=\"#{id}-layer-{number}\">")).Name(path).Markup("</a>");
        else html.Text("whole file");
    }
}
