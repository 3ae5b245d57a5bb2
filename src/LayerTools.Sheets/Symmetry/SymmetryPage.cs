using System.Globalization;
using LayerTools.Measures.Symmetry;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Sheets.Pages;
using LayerTools.Sheets.Text;

namespace LayerTools.Sheets.Symmetry;

/// <summary>Puts the picture of differences on a page, with its figures and a legend beside it.</summary>
internal sealed class SymmetryPage
{
    private const int LegendWidth = 360;
    private const int SwatchWidth = 44;
    private const int SwatchHeight = 22;
    private const int RowGap = 8;
    private const int CanvasDash = 14;
    private const int BestDash = 4;

    private static readonly Palette Colors = Palette.For(SheetBackground.Grey);

    private readonly List<PageElement> elements = [];
    private readonly ITextRuler ruler;
    private readonly int left;
    private int top;

    private SymmetryPage(ITextRuler ruler, int left, int top)
    {
        this.ruler = ruler;
        this.left = left;
        this.top = top;
    }

    /// <summary>Composes the page.</summary>
    /// <param name="file">The file that is shown.</param>
    /// <param name="figures">What was measured of the figure.</param>
    /// <param name="small">The figure, perhaps smaller than the canvas.</param>
    /// <param name="zoom">Columns and rows shown for each of its pixels.</param>
    /// <param name="ruler">Says how wide text is.</param>
    public static SheetPage Compose(LayerFile file, LayerSymmetry figures, Raster small, int zoom, ITextRuler ruler)
    {
        var scale = (double)small.Width * zoom / file.Width;
        var picture = SymmetryMap.Paint(small, zoom);
        SymmetryMap.PaintLine(picture, file.Axis * scale, CanvasDash);
        var isApart = figures.AxisOffset is { } offset && Math.Abs(offset * scale) >= 3;
        if (isApart) SymmetryMap.PaintLine(picture, figures.Axis!.Value * scale, BestDash);
        var headerBottom = SheetMetrics.Margin + SheetMetrics.Title.LineHeight + SheetMetrics.Subtitle.LineHeight + (2 * RowGap);
        var area = Bounds.FromSize(SheetMetrics.Margin, headerBottom, picture.Width, picture.Height);
        var page = new SymmetryPage(ruler, area.Right + SheetMetrics.Margin, headerBottom);
        page.elements.Add(new PictureElement(area, picture));
        page.elements.Add(new FrameElement(area, Colors.Line));
        var width = page.left + LegendWidth + SheetMetrics.Margin;
        page.AddHeader(file, scale, width - (2 * SheetMetrics.Margin));
        page.AddFigures(figures);
        page.AddPatches();
        page.AddLines(figures, isApart);
        page.AddScale(scale);
        return new SheetPage(width, Math.Max(area.Bottom, page.top) + SheetMetrics.Margin, Colors.Paper, page.elements);
    }

    private static string Say(FormattableString text) => FormattableString.Invariant(text);

    private void AddHeader(LayerFile file, double scale, int width)
    {
        Add(Bounds.FromSize(SheetMetrics.Margin, SheetMetrics.Margin, width, SheetMetrics.Title.LineHeight), SafeText.Clean(file.Name), SheetMetrics.Title, Colors.Ink);
        var shown = scale > 1 ? Say($"1 px of the canvas is shown as {scale:0.##}") : scale < 1 ? Say($"1 px stands for {1 / scale:0.##} px of the canvas") : "shown pixel for pixel";
        var place = Bounds.FromSize(SheetMetrics.Margin, SheetMetrics.Margin + SheetMetrics.Title.LineHeight, width, SheetMetrics.Subtitle.LineHeight);
        Add(place, Say($"Where the halves differ · {file.Width} × {file.Height} px canvas · {shown}"), SheetMetrics.Subtitle, Colors.QuietInk);
    }

    private void AddFigures(LayerSymmetry figures)
    {
        if (figures.Iou is not { } iou)
        {
            AddWords(figures.Note, SheetMetrics.Name);
            return;
        }

        AddWords(Say($"Coverage agrees by {iou:0.##} %"), SheetMetrics.Name);
        AddWords("intersection over union, across the canvas axis", SheetMetrics.Detail);
        if (figures.ColorDifference is { } difference)
        {
            top += RowGap;
            AddWords(Say($"Colours differ by {difference:0.##} ΔE00 in the mean"), SheetMetrics.Name);
            AddWords("CIEDE2000, where both are covered; 1 is just seen", SheetMetrics.Detail);
        }

        top += 2 * RowGap;
    }

    private void AddPatches()
    {
        AddPatch(SymmetryCell.Extra, "covered here, but not across the axis");
        AddPatch(SymmetryCell.Missing, "covered across the axis, but not here");
        AddPatch(SymmetryCell.Same, Say($"covered on both sides, ΔE00 below {SymmetryMap.Steps[0]}"));
        for (var step = 0; step < SymmetryMap.Steps.Count; step++)
        {
            AddPatch(SymmetryCell.Slight + step, step + 1 < SymmetryMap.Steps.Count
                ? Say($"covered on both sides, ΔE00 {SymmetryMap.Steps[step]} to {SymmetryMap.Steps[step + 1]}")
                : Say($"covered on both sides, ΔE00 {SymmetryMap.Steps[step]} and more"));
        }

        top += RowGap;
    }

    private void AddLines(LayerSymmetry figures, bool isApart)
    {
        AddLine(CanvasDash, Say($"canvas axis, x = {figures.CanvasAxis:0.##} px"));
        if (figures.Axis is not { } axis || figures.AxisOffset is not { } offset) return;
        var where = Math.Abs(offset) < 0.05 ? "on the canvas axis" : Say($"{Math.Abs(offset):0.0} px to the {(offset > 0 ? "right" : "left")}");
        var words = Say($"axis that fits best, x = {axis:0.0} px, {where}");
        if (isApart) AddLine(BestDash, words);
        else AddWords(char.ToUpper(words[0], CultureInfo.InvariantCulture) + words.Substring(1), SheetMetrics.Detail);
        if (figures.Angle is { } angle && Math.Abs(angle) >= 0.5 && figures.AngleIou > figures.BestIou + 1) AddWords(Say($"One that leans {Math.Abs(angle):0.0}° to the {(angle > 0 ? "right" : "left")} fits better"), SheetMetrics.Detail);
        top += RowGap;
    }

    /// <summary>A bar of 1, 2 or 5 times a power of ten, as long as fits a third of the legend.</summary>
    private void AddScale(double scale)
    {
        var longest = LegendWidth / 3 / scale;
        var power = Math.Pow(10, Math.Floor(Math.Log10(longest)));
        var length = longest >= 5 * power ? 5 * power : longest >= 2 * power ? 2 * power : power;
        var bar = (int)Math.Round(length * scale);
        elements.Add(new FillElement(Bounds.FromSize(left, top + (SwatchHeight / 2) - 2, bar, 4), Colors.Ink));
        foreach (var end in new[] { left, left + bar - 2 }) elements.Add(new FillElement(Bounds.FromSize(end, top + 3, 2, SwatchHeight - 6), Colors.Ink));
        AddBeside(bar, Say($"{length:0.####} px of the canvas"));
    }

    private void AddPatch(SymmetryCell cell, string words) => AddSwatch(SymmetryMap.PaintPatch(cell, SwatchWidth, SwatchHeight), words);

    private void AddLine(int dash, string words)
    {
        const int Height = 56;
        var patch = SymmetryMap.PaintPatch(SymmetryCell.Same, SwatchWidth, Height);
        SymmetryMap.PaintLine(patch, SwatchWidth / 2.0, dash);
        AddSwatch(patch, words);
    }

    private void AddSwatch(Raster swatch, string words)
    {
        var area = Bounds.FromSize(left, top, swatch.Width, swatch.Height);
        elements.Add(new PictureElement(area, swatch));
        elements.Add(new FrameElement(area, Colors.QuietInk));
        AddBeside(SwatchWidth, words, swatch.Height);
    }

    private void AddBeside(int indent, string words, int height = SwatchHeight)
    {
        var style = SheetMetrics.Detail;
        indent += RowGap;
        var lines = LineBreaker.Break(words, style, LegendWidth - indent, 2, ruler);
        var line = top + Math.Max(0, (height - (lines.Count * style.LineHeight)) / 2);
        foreach (var text in lines)
        {
            Add(Bounds.FromSize(left + indent, line, LegendWidth - indent, style.LineHeight), text, style, Colors.Ink);
            line += style.LineHeight;
        }

        top = Math.Max(top + height, line) + RowGap;
    }

    private void AddWords(string words, TextStyle style)
    {
        foreach (var line in LineBreaker.Break(words, style, LegendWidth, 3, ruler))
        {
            Add(Bounds.FromSize(left, top, LegendWidth, style.LineHeight), line, style, Colors.Ink);
            top += style.LineHeight;
        }
    }

    private void Add(Bounds area, string words, TextStyle style, Rgb color) =>
        elements.Add(new TextElement(area, MiddleShortener.Fit(words, style, area.Width, ruler), style, color, Colors.Paper));
}
