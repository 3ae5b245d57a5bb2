namespace LayerTools.Sheets.Reports;

/// <summary>The table of all files, and what it can be narrowed by. On narrow screens it is laid out as a list; the roles keep it a table for those who hear it.</summary>
internal static class OverviewTable
{
    /// <summary>The controls are shown by the script, since they do nothing without it.</summary>
    private const string Controls = """
        <form id="controls" role="search" aria-label="Narrow the report" hidden>
        <p><label for="find">Find files, layers or findings</label><input id="find" type="search" autocomplete="off"></p>
        <p><label for="which">Show</label><select id="which">
        <option value="">all files</option>
        <option value="error">files with errors</option>
        <option value="warning">files with warnings or errors</option>
        <option value="open">files with open parts</option>
        <option value="trouble">files not read in full</option>
        </select></p>
        <p class="buttons"><button type="button" id="open-all">Open all</button> <button type="button" id="close-all">Close all</button></p>
        <p id="told" role="status"></p>
        </form>

        """;

    public static void Write(HtmlWriter html, IReadOnlyList<OverviewEntry> entries)
    {
        html.Markup("<section aria-labelledby=\"overview\"><h2 id=\"overview\">Overview</h2>\n").Markup(Controls.Replace("\r\n", "\n"));
        html.Markup("<div class=\"wide\" role=\"group\" tabindex=\"0\" aria-label=\"All files\"><table class=\"sortable overview\" role=\"table\"><caption class=\"unseen\">All files</caption>\n");
        html.Markup("<thead role=\"rowgroup\"><tr role=\"row\"><td role=\"cell\"></td>")
            .Markup("<th scope=\"col\" role=\"columnheader\">File</th><th scope=\"col\" role=\"columnheader\" class=\"number\">Parts</th>")
            .Markup("<th scope=\"col\" role=\"columnheader\">Done</th><th scope=\"col\" role=\"columnheader\">Findings</th></tr></thead>\n<tbody role=\"rowgroup\">\n");
        for (var i = 0; i < entries.Count; i++) WriteRow(html, entries[i], FormattableString.Invariant($"file-{i + 1}"));
        html.Markup("</tbody></table></div></section>\n");
    }

    private static void WriteRow(HtmlWriter html, OverviewEntry entry, string id)
    {
        html.Markup($"<tr role=\"row\" data-file=\"{id}\" data-states=\"{string.Join(" ", States(entry))}\"><td role=\"cell\" class=\"picture\">");
        entry.Picture?.Write(html, string.Empty);
        html.Markup($"</td><th scope=\"row\" role=\"rowheader\"><a href=\"#{id}\">").Name(entry.Name).Markup("</a>").Element("small", entry.Facts).Markup("</th>");
        if (entry.IsUnread)
        {
            html.Markup("<td role=\"cell\" class=\"number\" data-key=\"\">").Text(ReportWords.Nothing).Markup("</td><td role=\"cell\" data-key=\"\">").Text(ReportWords.Nothing).Markup($"</td><td role=\"cell\" data-key=\"{ReportCell.Sortable(long.MaxValue)}\">");
            ReportSign.Error.Write(html, "could not be read");
        }
        else
        {
            WriteSums(html, entry);
        }

        html.Markup("</td></tr>\n");
    }

    private static void WriteSums(HtmlWriter html, OverviewEntry entry)
    {
        html.Markup("<td role=\"cell\" class=\"number\"").Attribute("data-key", entry.Sum is { } sum ? ReportCell.Sortable(sum.Parts) : string.Empty).Markup(">");
        html.Text(ReportWords.Number(entry.Sum?.Parts)).Markup(entry.Sum is null ? string.Empty : "<span class=\"unit\"> parts</span>").Markup("</td><td role=\"cell\"").Attribute("data-key", entry.Sum?.PercentByCount is { } percent ? ReportCell.Sortable(percent) : string.Empty).Markup(">");
        if (entry.Sum?.PercentByCount is { } share) html.Markup(FormattableString.Invariant($"<span class=\"bar\" aria-hidden=\"true\"><span style=\"width:{share:0.#}%\"></span></span>"));
        html.Text(ReportWords.Done(entry.Sum)).Markup("<span class=\"unit\"> done</span>").Markup("</td><td role=\"cell\"").Attribute("data-key", entry.Findings is { } counts ? ReportCell.Sortable(counts.Rank) : string.Empty).Markup(">");
        if (entry.Findings is { } findings) findings.Write(html);
        if (entry.HasProblems) ReportSign.Error.Write(html, "not read in full");
    }

    private static IEnumerable<string> States(OverviewEntry entry)
    {
        if (entry.IsUnread || entry.HasProblems) yield return "trouble";
        if (entry.IsUnread || entry.Findings is { Errors: > 0 }) yield return "error";
        if (entry.IsUnread || entry.Findings is { Errors: > 0 } or { Warnings: > 0 }) yield return "warning";
        if (entry.Sum is { Open: > 0 }) yield return "open";
    }
}
