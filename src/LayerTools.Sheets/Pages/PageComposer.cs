using LayerTools.Model;
using LayerTools.Sheets.Text;

namespace LayerTools.Sheets.Pages;

/// <summary>Puts header and cells on a page.</summary>
internal sealed class PageComposer
{
    private readonly SheetGrid grid;
    private readonly Palette palette;
    private readonly ITextRuler ruler;

    public PageComposer(SheetGrid grid, Palette palette, ITextRuler ruler)
    {
        this.grid = grid;
        this.palette = palette;
        this.ruler = ruler;
    }

    /// <param name="page">0 for the first page.</param>
    /// <param name="title">The file's name.</param>
    /// <param name="subtitle">Facts about file and parts.</param>
    /// <param name="cells">The cells of this page.</param>
    public SheetPage Compose(int page, string title, string subtitle, IReadOnlyList<PageCell> cells)
    {
        var elements = new List<PageElement>();
        AddHeader(elements, title, subtitle, FormattableString.Invariant($"page {page + 1} of {grid.PageCount}"));
        if (cells.Count == 0) AddNothing(elements);
        for (var i = 0; i < cells.Count; i++)
        {
            AddTile(elements, grid.GetTile(i), cells[i]);
            AddLabel(elements, grid.GetLabel(i), cells[i]);
        }

        return new SheetPage(grid.PageWidth, grid.GetPageHeight(page), palette.Paper, elements);
    }

    private void AddHeader(List<PageElement> elements, string title, string subtitle, string pageWords)
    {
        var width = grid.PageWidth - 2 * SheetMetrics.Margin;
        var pageWidth = (int)Math.Ceiling(ruler.Measure(pageWords, SheetMetrics.Subtitle));
        var titleArea = Bounds.FromSize(SheetMetrics.Margin, SheetMetrics.Margin, width, SheetMetrics.Title.LineHeight);
        var subtitleArea = Bounds.FromSize(SheetMetrics.Margin, titleArea.Bottom, width - pageWidth - SheetMetrics.ColumnGap, SheetMetrics.Subtitle.LineHeight);
        AddText(elements, titleArea, SafeText.Clean(title), SheetMetrics.Title, palette.Ink);
        AddText(elements, subtitleArea, subtitle, SheetMetrics.Subtitle, palette.QuietInk);
        AddText(elements, Bounds.FromSize(SheetMetrics.Margin + width - pageWidth, titleArea.Bottom, pageWidth, SheetMetrics.Subtitle.LineHeight), pageWords, SheetMetrics.Subtitle, palette.QuietInk);
    }

    private void AddNothing(List<PageElement> elements)
    {
        var area = Bounds.FromSize(SheetMetrics.Margin, SheetMetrics.Margin + SheetMetrics.HeaderHeight, grid.PageWidth - 2 * SheetMetrics.Margin, SheetMetrics.Subtitle.LineHeight);
        AddText(elements, area, "There is no part that carries pixels.", SheetMetrics.Subtitle, palette.Ink);
    }

    private void AddTile(List<PageElement> elements, Bounds tile, PageCell cell)
    {
        // Words are easier to read on a plain tile.
        elements.Add(palette.IsChecker && cell.Picture is not null
            ? new CheckerElement(tile, palette.Tile, palette.OtherTile, SheetMetrics.CheckerSquare)
            : new FillElement(tile, palette.Tile));
        if (Contrast.Ratio(palette.Tile, palette.Paper) < 1.3) elements.Add(new FrameElement(tile, palette.Line));
        if (cell.Picture is { } picture)
        {
            var x = tile.Left + (tile.Width - picture.Width) / 2;
            var y = tile.Top + (tile.Height - picture.Height) / 2;
            var area = Bounds.FromSize(x, y, picture.Width, picture.Height);
            elements.Add(new PictureElement(area, picture));
            if (palette.IsChecker || !TileMatch.IsLost(picture, palette.Tile)) return;
            elements.Add(new FrameElement(area, palette.TileInk));
            AddTileWords(elements, tile, "same colour as the background");
        }
        else
        {
            AddTileWords(elements, tile, DescribeAbsence(cell, tile));
        }
    }

    private static string DescribeAbsence(PageCell cell, Bounds tile)
    {
        if (cell.Fit is null) return CellWords.Absence(cell.Part);
        if (cell.Problem is null) return "nothing visible";
        return tile.Width < SheetMetrics.NarrowCell ? "cannot be read" : $"cannot be read: {SafeText.Clean(cell.Problem)}";
    }

    private void AddTileWords(List<PageElement> elements, Bounds tile, string words)
    {
        var style = SheetMetrics.Detail;
        var inset = SheetMetrics.GetInset(tile.Width);
        var lines = LineBreaker.Break(words, style, tile.Width - 2 * inset, (tile.Height - 2 * inset) / style.LineHeight, ruler);
        var top = tile.Top + (tile.Height - lines.Count * style.LineHeight) / 2;
        foreach (var line in lines)
        {
            var area = Bounds.FromSize(tile.Left + inset, top, tile.Width - 2 * inset, style.LineHeight);
            elements.Add(new TextElement(area, line, style, palette.TileInk, palette.Tile, TextAlignment.Middle));
            top += style.LineHeight;
        }
    }

    private void AddLabel(List<PageElement> elements, Bounds label, PageCell cell)
    {
        var top = label.Top;
        AddLine(CellWords.Name(cell.Part), SheetMetrics.Name, palette.Ink);
        AddLine(CellWords.Path(cell.Part), SheetMetrics.Detail, palette.QuietInk);
        AddLine(CellWords.Size(cell.Part, cell.Fit, cell.Problem is not null), SheetMetrics.Detail, palette.Ink);
        var chipTop = top + (SheetMetrics.Detail.LineHeight - SheetMetrics.ChipSize) / 2;
        elements.Add(new ChipElement(Bounds.FromSize(label.Left, chipTop, SheetMetrics.ChipSize, SheetMetrics.ChipSize), CellWords.GetColor(cell.Part.Mark), palette.QuietInk));
        AddLine(CellWords.State(cell.Part), SheetMetrics.Detail, palette.Ink, SheetMetrics.ChipSize + SheetMetrics.ChipGap);

        void AddLine(string words, TextStyle style, Rgb color, int indent = 0)
        {
            AddText(elements, Bounds.FromSize(label.Left + indent, top, label.Width - indent, style.LineHeight), words, style, color);
            top += style.LineHeight;
        }
    }

    private void AddText(List<PageElement> elements, Bounds area, string words, TextStyle style, Rgb color) =>
        elements.Add(new TextElement(area, MiddleShortener.Fit(words, style, area.Width, ruler), style, color, palette.Paper));
}
