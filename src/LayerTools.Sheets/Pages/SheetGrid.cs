using LayerTools.Model;

namespace LayerTools.Sheets.Pages;

/// <summary>Where cells stand: columns, rows and pages for a number of cells. Each has one tile, or two side by side, and a label.</summary>
internal sealed class SheetGrid
{
    private const int TileGap = 6;
    private readonly int count;
    private readonly int tilesPerCell;
    private readonly bool isNarrow;
    private readonly int? fixedHeight;

    /// <summary>Pages as large as their cells need.</summary>
    private SheetGrid(int count, int cellSize, int columns, int tiles, SheetOptions options)
    {
        this.count = count;
        (TileWidth, TileHeight, tilesPerCell, Columns) = (cellSize, cellSize, tiles, columns);
        Style = SheetStyle.Screen;
        isNarrow = IsNarrow(cellSize, tiles);
        Margin = options.Margin ?? SheetMetrics.Margin;
        PageWidth = Math.Max(SheetMetrics.NarrowestPage, (2 * Margin) + (columns * GetCellWidth(cellSize, tiles)) + ((columns - 1) * Style.ColumnGap));
        var rows = Math.Max(1, DivideUp(count, columns));
        var limit = Math.Min(SheetMetrics.LargestHeight, SheetMetrics.LargestArea / PageWidth);
        var fitting = (int)Math.Max(1, (limit - FixedHeight + Style.RowGap) / RowPitch);
        PageCount = DivideUp(rows, fitting);
        // Rows are shared out evenly, so that the last page is not a leftover of one row.
        RowsPerPage = DivideUp(rows, PageCount);
    }

    /// <summary>Pages of a given size, which their cells fill.</summary>
    private SheetGrid(int count, SheetPageSize page, SheetOptions options, string path)
    {
        this.count = count;
        tilesPerCell = CountTiles(options);
        Style = page.IsPaper ? SheetStyle.Paper : SheetStyle.Screen;
        Density = page.Density;
        Margin = options.Margin is { } asked ? page.GetMargin(asked) : page.IsPaper ? page.GetMargin(PaperMargin) : SheetMetrics.Margin;
        (PageWidth, fixedHeight) = (page.Width, page.Height);
        var wanted = options.CellSize ?? (page.IsPaper ? PaperCell : ScreenCell);
        var width = PageWidth - (2 * Margin);
        var widest = CountFitting(width, GetTilesWidth(SheetOptions.SmallestCell), Style.ColumnGap);
        Columns = MakeEven(options, options.Columns ?? Math.Max(1, CountFitting(width, GetTilesWidth(wanted), Style.ColumnGap)));
        TileWidth = (((width - ((Columns - 1) * Style.ColumnGap)) / Columns) - ((tilesPerCell - 1) * TileGap)) / tilesPerCell;
        var height = page.Height - FixedHeight;
        RowsPerPage = Math.Max(1, CountFitting(height, Math.Min(wanted, Math.Max(TileWidth, 1)) + LabelPart, Style.RowGap));
        TileHeight = Math.Min(((height + Style.RowGap) / RowsPerPage) - Style.RowGap - LabelPart, TallestTile * TileWidth);
        if (TileWidth < SheetOptions.SmallestCell || TileHeight < SheetOptions.SmallestCell)
        {
            throw SheetException.Refuse(path, FormattableString.Invariant($"{Columns} columns do not fit a page of {page.Width} x {page.Height} px with margins of {Margin} px."),
                widest >= 1 && height > SheetOptions.SmallestCell + LabelPart ? FormattableString.Invariant($"Use at most {widest} columns, a larger page or smaller margins.") : "Use a larger page or smaller margins.");
        }

        PageCount = Math.Max(1, DivideUp(count, RowsPerPage * Columns));
    }

    public SheetStyle Style { get; }

    /// <summary>Pixels of a stored picture in one of the layout.</summary>
    public int Density { get; } = 1;

    public int Margin { get; }

    public int TileWidth { get; }

    public int TileHeight { get; }

    public int Columns { get; }

    public int RowsPerPage { get; }

    public int PageCount { get; }

    public int PageWidth { get; }

    private const int PaperMargin = 12;
    private const int PaperCell = 150;
    private const int ScreenCell = 220;

    /// <summary>A single row of cells on a tall page is not stretched further, in widths.</summary>
    private const int TallestTile = 2;

    private int LabelPart => Style.LabelGap + Style.LabelHeight;

    private int RowPitch => (isNarrow ? Math.Max(TileHeight, Style.LabelHeight) : TileHeight + LabelPart) + Style.RowGap;

    private int FixedHeight => (2 * Margin) + Style.HeaderHeight;

    /// <exception cref="SheetException">The columns asked for do not fit a page.</exception>
    public static SheetGrid Plan(int count, SheetOptions options, string path)
    {
        if (options.PageSize is { } page) return new SheetGrid(count, page, options, path);
        var cell = options.CellSize ?? SheetMetrics.Cell;
        var tiles = CountTiles(options);
        var margin = options.Margin ?? SheetMetrics.Margin;
        var rowHeight = IsNarrow(cell, tiles) ? Math.Max(cell, SheetStyle.Screen.LabelHeight) : cell + SheetStyle.Screen.LabelGap + SheetStyle.Screen.LabelHeight;
        var largest = (int)Math.Min(SheetMetrics.LargestWidth, SheetMetrics.LargestArea / ((2 * margin) + SheetStyle.Screen.HeaderHeight + rowHeight));
        var widest = CountColumns(largest);
        if (options.Columns is { } asked)
        {
            var used = MakeEven(options, Math.Min(asked, Math.Max(count, 1)));
            if (used <= widest) return new SheetGrid(count, cell, used, tiles, options);
            throw SheetException.Refuse(path, FormattableString.Invariant($"{used} columns of {cell} px make too large a page."),
                FormattableString.Invariant($"Use at most {widest} columns, or smaller cells."));
        }

        var comfortable = Math.Min(widest, CountColumns(SheetMetrics.ComfortableWidth));
        var rows = Math.Max(1, DivideUp(count, comfortable));
        return new SheetGrid(count, cell, MakeEven(options, Math.Max(1, DivideUp(count, rows))), tiles, options);

        int CountColumns(int pageWidth) => Math.Max(1, CountFitting(pageWidth - (2 * margin), GetCellWidth(cell, tiles), SheetMetrics.ColumnGap));
    }

    public int GetFirst(int page) => page * RowsPerPage * Columns;

    public int GetCount(int page) => Math.Min(RowsPerPage * Columns, count - GetFirst(page));

    public int GetPageHeight(int page)
    {
        if (fixedHeight is { } height) return height;
        var rows = Math.Max(1, DivideUp(GetCount(page), Columns));
        return FixedHeight + (rows * RowPitch) - Style.RowGap;
    }

    /// <summary>The rectangle that a part is fitted into.</summary>
    /// <param name="index">Place on the page, 0 and up.</param>
    /// <param name="tile">0 for the cell's first tile, 1 for the second.</param>
    public Bounds GetTile(int index, int tile = 0)
    {
        var cellWidth = fixedHeight is null ? GetCellWidth(TileWidth, tilesPerCell) : GetTilesWidth(TileWidth);
        var x = Margin + (index % Columns * (cellWidth + Style.ColumnGap)) + (tile * (TileWidth + TileGap));
        var y = Margin + Style.HeaderHeight + (index / Columns * RowPitch);
        return Bounds.FromSize(x, y, TileWidth, TileHeight);
    }

    /// <summary>Where the words about a part stand.</summary>
    public Bounds GetLabel(int index)
    {
        var (first, last) = (GetTile(index), GetTile(index, tilesPerCell - 1));
        return isNarrow
            ? Bounds.FromSize(last.Right + SheetMetrics.BesideGap, first.Top, SheetMetrics.BesideLabelWidth, Style.LabelHeight)
            : Bounds.FromSize(first.Left, first.Bottom + Style.LabelGap, last.Right - first.Left, Style.LabelHeight);
    }

    private static int CountTiles(SheetOptions options) => options.View == SheetView.Both ? 2 : 1;

    /// <summary>Pairs must not be torn apart by the end of a row.</summary>
    private static int MakeEven(SheetOptions options, int columns) =>
        options.Arrangement != SheetArrangement.Pairs || columns % 2 == 0 ? columns : columns == 1 ? 2 : columns - 1;

    private static bool IsNarrow(int cellSize, int tiles) => (tiles * (cellSize + TileGap)) - TileGap < SheetMetrics.NarrowCell;

    private static int GetCellWidth(int cellSize, int tiles) =>
        (tiles * (cellSize + TileGap)) - TileGap + (IsNarrow(cellSize, tiles) ? SheetMetrics.BesideGap + SheetMetrics.BesideLabelWidth : 0);

    private static int CountFitting(int room, int item, int gap) => (room + gap) / (item + gap);

    private static int DivideUp(int value, int by) => (value + by - 1) / by;

    private int GetTilesWidth(int tile) => (tilesPerCell * (tile + TileGap)) - TileGap;
}
