namespace LayerTools.Sheets.Reports;

/// <summary>A table that can be sorted by every column.</summary>
/// <param name="caption">What it shows.</param>
/// <param name="columns">The headings, with units; those that begin with '#' head numbers.</param>
internal sealed class ReportTable(string caption, params string[] columns)
{
    private readonly List<ReportCell[]> rows = [];

    public void Add(params ReportCell[] cells) => rows.Add(cells);

    /// <summary>Writes the table; the first column names the row unless another is said to.</summary>
    public void Write(HtmlWriter html, int naming = 0)
    {
        html.Markup("<div class=\"wide\" role=\"group\" tabindex=\"0\"").Attribute("aria-label", caption).Markup("><table class=\"sortable\">");
        html.Element("caption class=\"unseen\"", caption).Markup("<thead><tr>");
        foreach (var column in columns) html.Element(IsNumber(column) ? "th scope=\"col\" class=\"number\"" : "th scope=\"col\"", column.TrimStart('#'));
        html.Markup("</tr></thead>\n<tbody>");
        foreach (var row in rows)
        {
            html.Markup("<tr class=\"fact\">");
            for (var i = 0; i < row.Length; i++)
            {
                html.Markup(i == naming ? "<th scope=\"row\"" : "<td");
                if (IsNumber(columns[i])) html.Markup(" class=\"number\"");
                if (row[i].Key is { } key) html.Attribute("data-key", key);
                html.Markup(">");
                row[i].Write(html);
                html.Markup(i == naming ? "</th>" : "</td>");
            }

            html.Markup("</tr>\n");
        }

        html.Markup("</tbody></table></div>\n");
    }

    private static bool IsNumber(string column) => column[0] == '#';
}
