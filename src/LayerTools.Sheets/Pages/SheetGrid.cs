using LayerTools.Model;

namespace LayerTools.Sheets.Pages;

/// <summary>Where cells stand: columns, rows and pages for a number of parts.</summary>
internal sealed class SheetGrid
{
    private readonly int count;

    private SheetGrid(int count, int cellSize, int columns)
    {
        this.count = count;
        CellSize = cellSize;
        Columns = columns;
        var rows = Math.Max(1, DivideUp(count, columns));
        var limit = Math.Min(SheetMetrics.LargestHeight, SheetMetrics.LargestArea / PageWidth);
        var fitting = (int)Math.Max(1, (limit - FixedHeight + SheetMetrics.RowGap) / RowPitch);
        PageCount = DivideUp(rows, fitting);
        // Rows are shared out evenly, so that the last page is not a leftover of one row.
        RowsPerPage = DivideUp(rows, PageCount);
    }

    public int CellSize { get; }

    public int Columns { get; }

    public int RowsPerPage { get; }

    public int PageCount { get; }

    public int PageWidth => GetPageWidth(CellSize, Columns);

    private int RowPitch => GetRowHeight(CellSize) + SheetMetrics.RowGap;

    private static int FixedHeight => 2 * SheetMetrics.Margin + SheetMetrics.HeaderHeight;

    /// <exception cref="SheetException">The columns asked for do not fit a page.</exception>
    public static SheetGrid Plan(int count, SheetOptions options, string path)
    {
        var widest = CountColumns(options.CellSize, GetLargestWidth(options.CellSize));
        if (options.Columns is { } asked)
        {
            var used = Math.Min(asked, Math.Max(count, 1));
            if (used <= widest) return new SheetGrid(count, options.CellSize, used);
            throw SheetException.Refuse(path, FormattableString.Invariant($"{used} columns of {options.CellSize} px make too large a page."),
                FormattableString.Invariant($"Use at most {widest} columns, or smaller cells."));
        }

        var comfortable = Math.Min(widest, CountColumns(options.CellSize, SheetMetrics.ComfortableWidth));
        var rows = Math.Max(1, DivideUp(count, comfortable));
        return new SheetGrid(count, options.CellSize, Math.Max(1, DivideUp(count, rows)));
    }

    public int GetFirst(int page) => page * RowsPerPage * Columns;

    public int GetCount(int page) => Math.Min(RowsPerPage * Columns, count - GetFirst(page));

    public int GetPageHeight(int page)
    {
        var rows = Math.Max(1, DivideUp(GetCount(page), Columns));
        return FixedHeight + rows * RowPitch - SheetMetrics.RowGap;
    }

    /// <summary>The square that a part is fitted into.</summary>
    /// <param name="index">Place on the page, 0 and up.</param>
    public Bounds GetTile(int index)
    {
        var x = SheetMetrics.Margin + index % Columns * (GetCellWidth(CellSize) + SheetMetrics.ColumnGap);
        var y = SheetMetrics.Margin + SheetMetrics.HeaderHeight + index / Columns * RowPitch;
        return Bounds.FromSize(x, y, CellSize, CellSize);
    }

    /// <summary>Where the words about a part stand.</summary>
    public Bounds GetLabel(int index)
    {
        var tile = GetTile(index);
        return IsNarrow(CellSize)
            ? Bounds.FromSize(tile.Right + SheetMetrics.BesideGap, tile.Top, SheetMetrics.BesideLabelWidth, SheetMetrics.LabelHeight)
            : Bounds.FromSize(tile.Left, tile.Bottom + SheetMetrics.LabelGap, CellSize, SheetMetrics.LabelHeight);
    }

    private static bool IsNarrow(int cellSize) => cellSize < SheetMetrics.NarrowCell;

    private static int GetCellWidth(int cellSize) => IsNarrow(cellSize) ? cellSize + SheetMetrics.BesideGap + SheetMetrics.BesideLabelWidth : cellSize;

    private static int GetRowHeight(int cellSize) => IsNarrow(cellSize)
        ? Math.Max(cellSize, SheetMetrics.LabelHeight)
        : cellSize + SheetMetrics.LabelGap + SheetMetrics.LabelHeight;

    private static int GetPageWidth(int cellSize, int columns) => Math.Max(SheetMetrics.NarrowestPage,
        2 * SheetMetrics.Margin + columns * GetCellWidth(cellSize) + (columns - 1) * SheetMetrics.ColumnGap);

    private static int GetLargestWidth(int cellSize) => (int)Math.Min(SheetMetrics.LargestWidth, SheetMetrics.LargestArea / (FixedHeight + GetRowHeight(cellSize)));

    private static int CountColumns(int cellSize, int pageWidth) =>
        Math.Max(1, (pageWidth - 2 * SheetMetrics.Margin + SheetMetrics.ColumnGap) / (GetCellWidth(cellSize) + SheetMetrics.ColumnGap));

    private static int DivideUp(int value, int by) => (value + by - 1) / by;
}
