using LayerTools.Measures.Symmetry;

namespace LayerTools.Sheets.Reports;

/// <summary>Tables of what was measured.</summary>
internal static class MeasureTables
{
    public static void Write(HtmlWriter html, FileReading reading)
    {
        WriteSymmetry(html, reading);
        WriteCover(html, reading);
        WriteDetail(html, reading);
        WriteBudget(html, reading);
    }

    private static void WriteSymmetry(HtmlWriter html, FileReading reading)
    {
        if (reading.Symmetry is not { } figures) return;
        html.Markup("<h4>Symmetry</h4>\n");
        html.Element("p", "Agreement is how much of the outlines of both halves is shared across the centre of the canvas. Shift is how far the best axis lies to the right of the centre.");
        var table = new ReportTable("Symmetry", "Part", "Opposite", "#Agreement (%)", "#Colour (ΔE00)", "#Shift (px)", "#Tilt (°)", "Note");
        foreach (var row in figures)
        {
            table.Add(
                row.Kind == SymmetryKind.Figure ? ReportCell.Text("whole figure") : ReportCell.Name(row.LayerPath),
                row.OppositePath.Length > 0 ? ReportCell.Name(row.OppositePath) : ReportCell.Text(ReportWords.Nothing),
                ReportCell.Number(row.Iou, 1), ReportCell.Number(row.ColorDifference, 1), ReportCell.Number(row.AxisOffset, 1), ReportCell.Number(row.Angle, 1), ReportCell.Text(row.Note));
        }

        table.Write(html);
    }

    private static void WriteCover(HtmlWriter html, FileReading reading)
    {
        if (reading.Cover is not { } parts) return;
        html.Markup("<h4>Painted underneath</h4>\n");
        html.Element("p", "How much of each part is seen, and how far it goes on beneath the parts in front of it. Where it does not go far enough, a gap opens when it moves.");
        var table = new ReportTable("Painted underneath", "Part", "#Seen (%)", "#Seams (px)", "#Would open (px)", "#Least depth (px)", "#Wanted (px)", "Worst beneath");
        foreach (var row in parts)
        {
            table.Add(
                ReportCell.Name(row.LayerPath), ReportCell.Number(row.VisiblePercent, 1), ReportCell.Number(row.SeamLength), ReportCell.Number(row.ShallowLength),
                ReportCell.Number(row.SmallestDepth, 1), ReportCell.Number(row.WantedDepth, 1), ReportCell.Name(row.WorstNeighbour));
        }

        table.Write(html);
    }

    private static void WriteDetail(HtmlWriter html, FileReading reading)
    {
        if (reading.Detail is not { } framings) return;
        html.Markup("<h4>Detail</h4>\n");
        html.Element("p", "Screen pixels for each pixel of the drawing when the framing fills the screen. Above 1 the screen shows single pixels.");
        var table = new ReportTable("Detail", "Framing", "Screen", "#Ratio", "Sharp", "#Closest zoom (times)", "Canvas it would take");
        foreach (var row in framings)
        {
            table.Add(
                ReportCell.Text(ReportWords.Split(row.Framing.ToString())), ReportCell.Text($"{row.Screen}, {ReportWords.Size(row.ScreenWidth, row.ScreenHeight)}"), ReportCell.Number(row.Ratio, 2),
                ReportCell.Text(row.ShowsPixels ? "no" : "yes"), ReportCell.Number(row.ClosestZoom, 2), ReportCell.Text(ReportWords.Size(row.NeededCanvasWidth, row.NeededCanvasHeight)));
        }

        table.Write(html);
    }

    private static void WriteBudget(HtmlWriter html, FileReading reading)
    {
        if (reading.Budget is not { } sum) return;
        html.Markup("<h4>Textures</h4>\n");
        var table = new ReportTable($"Texture pages of {ReportWords.Size(sum.PageSize, sum.PageSize)}", "Size of the parts", "#Pages", "#Memory (MB)", "#Saved (MB)");
        table.Add(ReportCell.Text("as drawn"), ReportCell.Number(sum.Pages), ReportCell.Number(sum.MemoryMB, 1), ReportCell.Number(0, 1));
        table.Add(ReportCell.Text("75 %"), ReportCell.Number(sum.PagesAt75), ReportCell.Number(sum.MemoryMB - sum.SavedMBAt75, 1), ReportCell.Number(sum.SavedMBAt75, 1));
        table.Add(ReportCell.Text("50 %"), ReportCell.Number(sum.PagesAt50), ReportCell.Number(sum.MemoryMB - sum.SavedMBAt50, 1), ReportCell.Number(sum.SavedMBAt50, 1));
        table.Write(html);
        html.Markup("<p>").Text($"{ReportWords.Count(sum.Parts, "part")} fill {ReportWords.Percent(sum.FillPercent, 1)} of the pages.");
        if (sum.LargestPart is { } largest) html.Text(" The largest, ").Name(largest).Text($", takes {ReportWords.Percent(sum.LargestPartPercent, 1)} of that.");
        html.Markup("</p>\n");
    }
}
