using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Sheets.Text;

namespace LayerTools.Sheets.Pages;

/// <summary>Puts title block and cells on a page.</summary>
internal sealed class PageComposer
{
    private readonly SheetGrid grid;
    private readonly SheetOptions options;
    private readonly SheetStyle style;
    private readonly Palette palette;
    private readonly ITextRuler ruler;

    public PageComposer(SheetGrid grid, SheetOptions options, ITextRuler ruler)
    {
        this.grid = grid;
        this.options = options;
        this.ruler = ruler;
        style = grid.Style;
        palette = Palette.For(options.Background);
    }

    /// <param name="page">0 for the first page.</param>
    /// <param name="heading">The title block.</param>
    /// <param name="cells">The cells of this page.</param>
    public SheetPage Compose(int page, SheetHeading heading, IReadOnlyList<PageCell> cells)
    {
        var elements = new List<PageElement>();
        AddHeader(elements, heading, FormattableString.Invariant($"page {page + 1} of {grid.PageCount}"));
        if (cells.Count == 0) AddNothing(elements);
        for (var i = 0; i < cells.Count; i++)
        {
            AddTiles(elements, i, cells[i]);
            AddLabel(elements, grid.GetLabel(i), cells[i]);
        }

        return new SheetPage(grid.PageWidth, grid.GetPageHeight(page), palette.Paper, elements);
    }

    private void AddHeader(List<PageElement> elements, SheetHeading heading, string pageWords)
    {
        var width = grid.PageWidth - (2 * grid.Margin);
        var pageWidth = (int)Math.Ceiling(ruler.Measure(pageWords, style.Subtitle));
        var title = Bounds.FromSize(grid.Margin, grid.Margin, width, style.Title.LineHeight);
        var facts = Bounds.FromSize(grid.Margin, title.Bottom, width - pageWidth - style.ColumnGap, style.Subtitle.LineHeight);
        AddText(elements, title, heading.Title, style.Title, palette.Ink);
        AddText(elements, facts, heading.Facts, style.Subtitle, palette.QuietInk);
        AddText(elements, Bounds.FromSize(grid.Margin + width - pageWidth, title.Bottom, pageWidth, style.Subtitle.LineHeight), pageWords, style.Subtitle, palette.QuietInk);
        AddText(elements, Bounds.FromSize(grid.Margin, facts.Bottom, width, style.Subtitle.LineHeight), heading.Notes, style.Subtitle, palette.QuietInk);
    }

    private void AddNothing(List<PageElement> elements)
    {
        var area = Bounds.FromSize(grid.Margin, grid.Margin + style.HeaderHeight, grid.PageWidth - (2 * grid.Margin), style.Subtitle.LineHeight);
        AddText(elements, area, SubjectWords.Nothing(options.Content), style.Subtitle, palette.Ink);
    }

    private void AddTiles(List<PageElement> elements, int index, PageCell cell)
    {
        if (options.View != SheetView.InPlace) AddTile(elements, grid.GetTile(index), cell, cell.Picture, cell.Fit?.Zoom ?? 1);
        if (options.View != SheetView.Alone) AddTile(elements, grid.GetTile(index, options.View == SheetView.Both ? 1 : 0), cell, cell.Placed, cell.PlacedFit?.Zoom ?? 1);
    }

    private void AddTile(List<PageElement> elements, Bounds tile, PageCell cell, Raster? picture, int zoom)
    {
        var ground = palette.GetGround(tile);
        if (picture is null)
        {
            // Words are easier to read on a plain tile.
            elements.Add(new FillElement(tile, cell.Subject.IsMissing ? palette.Paper : palette.Tile));
            if (cell.Subject.IsMissing || IsPale) elements.Add(new FrameElement(tile, cell.Subject.IsMissing ? palette.QuietInk : palette.Line));
            AddAbsence(elements, tile, cell);
            return;
        }

        elements.AddRange(ground.Elements);
        if (IsPale) elements.Add(new FrameElement(tile, palette.Line));
        var (width, height) = (DivideUp(picture.Width * zoom, grid.Density), DivideUp(picture.Height * zoom, grid.Density));
        var area = Bounds.FromSize(tile.Left + ((tile.Width - width) / 2), tile.Top + ((tile.Height - height) / 2), width, height);
        elements.Add(new PictureElement(area, picture, grid.Density, zoom, ground));
        if (palette.Pattern != GroundPattern.Plain || !TileMatch.IsLost(picture, palette.Tile)) return;
        elements.Add(new FrameElement(area, palette.TileInk));
        AddTileWords(elements, tile, "same colour as the background", palette.TileInk, palette.Tile);
    }

    private bool IsPale => Contrast.Ratio(palette.Tile, palette.Paper) < 1.3;

    private void AddAbsence(List<PageElement> elements, Bounds tile, PageCell cell)
    {
        var words = SubjectWords.Absence(cell);
        if (tile.Width < SheetMetrics.NarrowCell && cell.Problem is not null) words = "cannot be read";
        if (cell.Subject.IsMissing) AddTileWords(elements, tile, words, palette.Ink, palette.Paper);
        else AddTileWords(elements, tile, words, palette.TileInk, palette.Tile);
    }

    private void AddTileWords(List<PageElement> elements, Bounds tile, string words, Rgb ink, Rgb background)
    {
        var inset = SheetMetrics.GetInset(tile.Width);
        var lines = LineBreaker.Break(words, style.Detail, tile.Width - (2 * inset), (tile.Height - (2 * inset)) / style.Detail.LineHeight, ruler);
        var top = tile.Top + ((tile.Height - (lines.Count * style.Detail.LineHeight)) / 2);
        foreach (var line in lines)
        {
            var area = Bounds.FromSize(tile.Left + inset, top, tile.Width - (2 * inset), style.Detail.LineHeight);
            elements.Add(new TextElement(area, line, style.Detail, ink, background, TextAlignment.Middle));
            top += style.Detail.LineHeight;
        }
    }

    private void AddLabel(List<PageElement> elements, Bounds label, PageCell cell)
    {
        var top = label.Top;
        AddLine(SubjectWords.Name(cell.Subject), style.Name, palette.Ink);
        AddLine(SubjectWords.Path(cell.Subject), style.Detail, palette.QuietInk);
        if (SubjectWords.Size(cell, options) is { Length: > 0 } size) AddLine(size, style.Detail, palette.Ink);
        var chipTop = top + ((style.Detail.LineHeight - style.ChipSize) / 2);
        var color = cell.Subject is { IsMissing: false, Layer: { } layer } ? CellWords.GetColor(layer.Mark) : null;
        elements.Add(new ChipElement(Bounds.FromSize(label.Left, chipTop, style.ChipSize, style.ChipSize), SubjectWords.Shape(cell.Subject), color, palette.QuietInk));
        // A dot stays with the words before it.
        var state = SubjectWords.State(cell.Subject).Replace(" \u00B7", "\u00A0\u00B7");
        var indent = style.ChipSize + SheetStyle.ChipGap;
        foreach (var line in LineBreaker.Break(state, style.Detail, label.Width - indent, SheetStyle.StateLines, ruler)) AddLine(line, style.Detail, palette.Ink, indent);

        void AddLine(string words, TextStyle type, Rgb color, int left = 0)
        {
            AddText(elements, Bounds.FromSize(label.Left + left, top, label.Width - left, type.LineHeight), words, type, color);
            top += type.LineHeight;
        }
    }

    private void AddText(List<PageElement> elements, Bounds area, string words, TextStyle type, Rgb color) =>
        elements.Add(new TextElement(area, MiddleShortener.Fit(words, type, area.Width, ruler), type, color, palette.Paper));

    private static int DivideUp(int value, int by) => (value + by - 1) / by;
}
