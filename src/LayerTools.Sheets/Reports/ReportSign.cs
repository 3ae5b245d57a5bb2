using LayerTools.Checks;

namespace LayerTools.Sheets.Reports;

/// <summary>A small shape that stands before a word, so that a column can be read at a glance; the word alone says all, and neither needs colour.</summary>
/// <param name="Id">What it is called in the page.</param>
/// <param name="Drawing">Its outline on a square of 16, as SVG.</param>
internal sealed record ReportSign(string Id, string Drawing)
{
    public static readonly ReportSign Error = new("error", "<path d=\"M8 0l8 8-8 8-8-8zM5.4 4.3L4.3 5.4 6.9 8l-2.6 2.6 1.1 1.1L8 9.1l2.6 2.6 1.1-1.1L9.1 8l2.6-2.6-1.1-1.1L8 6.9z\"/>");
    public static readonly ReportSign Warning = new("warning", "<path fill-rule=\"evenodd\" d=\"M8 1l8 14H0zM7.1 5.8v4.6h1.8V5.8zm0 5.6v1.8h1.8v-1.8z\"/>");
    public static readonly ReportSign Note = new("note", "<path fill-rule=\"evenodd\" d=\"M2 1h12v14H2zm2 2v10h8V3zm1.5 2h5v1.5h-5zm0 3h5v1.5h-5z\"/>");
    public static readonly ReportSign None = new("none", "<path d=\"M1 8.6l1.6-1.6 3.6 3.6L13.4 3 15 4.6l-8.8 9.2z\"/>");
    public static readonly ReportSign Done = new("done", "<path fill-rule=\"evenodd\" d=\"M8 0a8 8 0 110 16A8 8 0 018 0zM3.6 8.2l3.2 3.4 5.8-6.2-1.3-1.2-4.5 4.8-1.9-2z\"/>");
    public static readonly ReportSign Open = new("open", "<path fill-rule=\"evenodd\" d=\"M8 0a8 8 0 110 16A8 8 0 018 0zm0 2a6 6 0 100 12A6 6 0 008 2z\"/>");
    public static readonly ReportSign Unknown = new("unknown", "<path d=\"M1 7h3.5v2H1zm5.2 0h3.6v2H6.2zm5.3 0H15v2h-3.5z\"/>");

    public static IReadOnlyList<ReportSign> All { get; } = [Error, Warning, Note, None, Done, Open, Unknown];

    public static ReportSign Of(Severity severity) => severity switch
    {
        Severity.Error => Error,
        Severity.Warning => Warning,
        _ => Note,
    };

    /// <summary>Writes the shapes into a page, once, unseen.</summary>
    public static void WriteAll(HtmlWriter html)
    {
        html.Markup("<svg class=\"signs\" aria-hidden=\"true\" width=\"0\" height=\"0\">");
        foreach (var sign in All) html.Markup($"<symbol id=\"sign-{sign.Id}\" viewBox=\"0 0 16 16\">{sign.Drawing}</symbol>");
        html.Markup("</svg>\n");
    }

    /// <summary>Writes the shape and its word.</summary>
    public void Write(HtmlWriter html, string word) =>
        html.Markup($"<span class=\"sign {Id}\"><svg aria-hidden=\"true\"><use href=\"#sign-{Id}\"/></svg>").Text(word).Markup("</span>");
}
