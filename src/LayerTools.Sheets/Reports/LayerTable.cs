using LayerTools.Measures;
using LayerTools.Model;

namespace LayerTools.Sheets.Reports;

/// <summary>The tree of a file, front to back, with a picture of each part.</summary>
internal static class LayerTable
{
    public static void Write(HtmlWriter html, FileReading reading, string id)
    {
        var statuses = (reading.Statuses ?? []).ToDictionary(status => status.LayerNumber);
        var findings = (reading.Findings ?? []).Where(finding => finding.LayerNumber is not null).ToLookup(finding => finding.LayerNumber!.Value);
        html.Markup("<div class=\"wide\" role=\"group\" tabindex=\"0\"").Attribute("aria-label", $"Layers of {reading.File.Name}").Markup("><table class=\"layers\">");
        html.Element("caption", "Layers, front to back; what lies in a group is set in");
        html.Markup("<thead><tr><th scope=\"col\">Picture</th><th scope=\"col\">Layer</th><th scope=\"col\">State</th><th scope=\"col\">Findings</th></tr></thead>\n<tbody>");
        foreach (var layer in reading.File.GetLayers())
        {
            statuses.TryGetValue(layer.LayerNumber, out var status);
            WriteRow(html, reading, layer, status, SeverityCounts.Of(findings[layer.LayerNumber]), id);
        }

        html.Markup("</tbody></table></div>\n");
    }

    private static void WriteRow(HtmlWriter html, FileReading reading, Layer layer, LayerStatus? status, SeverityCounts findings, string id)
    {
        var isGroup = layer.Kind == LayerKind.Group;
        html.Markup(FormattableString.Invariant($"<tr id=\"{id}-layer-{layer.LayerNumber}\" class=\"layer{(isGroup ? " group" : string.Empty)}\" data-depth=\"{layer.Depth}\"><td class=\"picture\">"));
        WritePicture(html, reading, layer);
        html.Markup(FormattableString.Invariant($"</td><th scope=\"row\"><div class=\"set\" style=\"--depth:{layer.Depth}\">"));
        if (isGroup) html.Markup("<span class=\"kind\">Group</span> ");
        html.Name(layer.Name).Element("small", ReportWords.Look(layer)).Markup("</div></th><td>");
        WriteState(html, layer, status);
        html.Markup("</td><td>");
        if (findings.Total > 0) findings.Write(html);
        html.Markup("</td></tr>\n");
    }

    private static void WritePicture(HtmlWriter html, FileReading reading, Layer layer)
    {
        if (reading.Pictures.TryGetValue(layer, out var picture)) picture.Write(html, string.Empty);
        else if (reading.Unreadable.ContainsKey(layer)) html.Text("cannot be read");
        else if (layer.Kind is not (LayerKind.Group or LayerKind.Adjustment)) html.Text("empty");
    }

    private static void WriteState(HtmlWriter html, Layer layer, LayerStatus? status)
    {
        if (status is not null)
        {
            var (sign, word) = ReportWords.State(status);
            if (sign is null) html.Text(word);
            else sign.Write(html, word);
        }

        var remarks = ReportWords.Remarks(layer, status);
        if (remarks.Length > 0) html.Element("small", remarks);
    }
}
