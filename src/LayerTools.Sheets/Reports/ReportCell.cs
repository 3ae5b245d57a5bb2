namespace LayerTools.Sheets.Reports;

/// <summary>One cell of a table.</summary>
/// <param name="Write">Writes what it shows.</param>
/// <param name="Key">What to sort by, if not by the words: a number.</param>
internal sealed record ReportCell(Action<HtmlWriter> Write, string? Key = null)
{
    public static ReportCell Text(string text) => new(html => html.Text(text));

    public static ReportCell Name(string? name) => new(html =>
    {
        if (name is null) html.Text(ReportWords.Nothing);
        else html.Name(name);
    });

    public static ReportCell Number(double? value, int digits = 0) => new(html => html.Text(ReportWords.Number(value, digits)), value is { } number ? Sortable(number) : string.Empty);

    public static string Sortable(double value) => value.ToString("R", System.Globalization.CultureInfo.InvariantCulture);
}
