using LayerTools.Sheets.Text;

namespace LayerTools.Sheets.Pages;

/// <summary>The measures that all pages share, px at 100 %.</summary>
internal static class SheetMetrics
{
    public const int Margin = 48;
    /// <summary>Side of a cell where nobody says it.</summary>
    public const int Cell = 320;

    public const int ColumnGap = 28;
    public const int RowGap = 34;
    public const int LabelGap = 10;
    public const int BesideGap = 16;

    /// <summary>Below this the words stand beside the cell, since they would not fit under it.</summary>
    public const int NarrowCell = 200;

    public const int BesideLabelWidth = 224;
    public const int ChipSize = 11;
    public const int CheckerSquare = 16;

    /// <summary>The narrowest page, so that the header has room.</summary>
    public const int NarrowestPage = 720;

    /// <summary>How wide a page gets when nobody says how many columns it has: it fits a common screen at 100 %.</summary>
    public const int ComfortableWidth = 1920;

    public const int LargestHeight = 4096;

    /// <summary>The most that a WebP has (RFC 9649).</summary>
    public const int LargestWidth = 16383;

    public const long LargestArea = 16_000_000;

    public static TextStyle Title { get; } = new(27, 38, IsBold: true);

    public static TextStyle Subtitle { get; } = new(15, 24);

    public static TextStyle Name { get; } = new(15, 22, IsBold: true);

    public static TextStyle Detail { get; } = new(13, 19);

    /// <summary>Room kept free inside the cell's edge, px.</summary>
    public static int GetInset(int cellSize) => Math.Min(Math.Max(cellSize / 20, 4), 24);
}
