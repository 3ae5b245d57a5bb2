using LayerTools.Sheets.Text;

namespace LayerTools.Sheets.Pages;

/// <summary>Type and gaps of a kind of page, px of the layout.</summary>
internal sealed record SheetStyle(TextStyle Title, TextStyle Subtitle, TextStyle Name, TextStyle Detail, int ColumnGap, int RowGap, int LabelGap, int ChipSize)
{
    public const int StateLines = 2;
    public const int ChipGap = 7;
    private const int HeaderLines = 2;

    /// <summary>For pages that are read on a screen.</summary>
    public static SheetStyle Screen { get; } = new(SheetMetrics.Title, SheetMetrics.Subtitle, SheetMetrics.Name, SheetMetrics.Detail,
        SheetMetrics.ColumnGap, SheetMetrics.RowGap, SheetMetrics.LabelGap, SheetMetrics.ChipSize);

    /// <summary>For paper, which is held closer and printed finer: 8 and 9 points.</summary>
    public static SheetStyle Paper { get; } = new(new TextStyle(21, 30, IsBold: true), new TextStyle(12, 18), new TextStyle(12, 17, IsBold: true), new TextStyle(11, 15), 18, 20, 7, 10);

    public int HeaderHeight => Title.LineHeight + (HeaderLines * Subtitle.LineHeight) + (2 * ColumnGap / 3);

    /// <summary>Name, path, size and scale, and the state, which may need two lines.</summary>
    public int LabelHeight => Name.LineHeight + ((2 + StateLines) * Detail.LineHeight);
}
