using System.Globalization;
using LayerTools.Deliveries;

namespace LayerTools.Sheets.Reports;

/// <summary>What changed since the delivery before, what would break a rig first; layers that are the same are left out.</summary>
internal static class ChangeTable
{
    public static void Write(HtmlWriter html, FileReading reading, string id)
    {
        if (reading.Changes is not { } changes) return;
        html.Markup("<h4>Changes since the delivery before</h4>\n");
        foreach (var warning in changes.Warnings) html.Element("p class=\"fact\"", warning);
        var changed = changes.Differences.Where(difference => difference.Change != LayerChange.Same).ToList();
        var same = changes.Differences.Count - changed.Count;
        html.Element("p", $"{ReportWords.Count(changed.Count, "layer")} changed, {same.ToString(CultureInfo.InvariantCulture)} are the same.");
        if (changed.Count == 0) return;
        var table = new ReportTable("Changes", "Layer", "What", "What breaks", "#Repainted (%)", "Before");
        foreach (var difference in changed)
        {
            table.Add(
                new ReportCell(target => WriteLayer(target, difference, id), ReportCell.Sortable(difference.LayerNumber ?? 0)),
                ReportCell.Text(Describe(difference)),
                difference.Breaks is { } breaks ? new ReportCell(target => ReportSign.Warning.Write(target, breaks)) : ReportCell.Text(ReportWords.Nothing),
                ReportCell.Number(difference.RepaintedPercent, 1),
                ReportCell.Name(difference.OldLayerPath));
        }

        table.Write(html);
    }

    private static void WriteLayer(HtmlWriter html, LayerDifference difference, string id)
    {
        if (difference.LayerNumber is { } number) html.Markup(FormattableString.Invariant($"<a href=\"#{id}-layer-{number}\">")).Name(difference.LayerPath).Markup("</a>");
        else html.Name(difference.LayerPath);
    }

    private static string Describe(LayerDifference difference)
    {
        var words = ReportWords.Split(difference.Change.ToString()).ToLowerInvariant();
        if (difference is { MovedRight: { } right, MovedDown: { } down }) words += FormattableString.Invariant($"; by {right}, {down} px");
        if (difference is { WidthPercent: { } width, HeightPercent: { } height }) words += FormattableString.Invariant($"; to {width} % of the width and {height} % of the height");
        return words;
    }
}
