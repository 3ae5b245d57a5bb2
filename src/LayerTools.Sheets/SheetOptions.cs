using LayerTools.Sheets.Text;

namespace LayerTools.Sheets;

/// <summary>How a contact sheet looks and how it is written.</summary>
public sealed record SheetOptions
{
    /// <summary>Smallest side of a cell, px.</summary>
    public const int SmallestCell = 64;

    /// <summary>Largest side of a cell, px.</summary>
    public const int LargestCell = 2048;

    /// <summary>Widest margin, mm or px.</summary>
    public const int LargestMargin = 200;

    /// <summary>Side of the square that a part is fitted into, px of the layout: 64 to 2048; null to suit the page. Pages of a given size fill their room, so cells become somewhat larger.</summary>
    public int? CellSize { get; init; }

    /// <summary>Cells side by side, 1 or more; null lets the sheet choose. A sheet of no given size never has more columns than parts.</summary>
    public int? Columns { get; init; }

    /// <summary>The size of the pages; null for pages as large as their cells need, in a PDF for A4.</summary>
    public SheetPageSize? PageSize { get; init; }

    /// <summary>Room around the page: millimetres on paper, px otherwise; null for 12 mm or 48 px. 0 to 200.</summary>
    public int? Margin { get; init; }

    /// <summary>What stands above each page, where <c>{File}</c>, <c>{Date}</c>, <c>{Canvas}</c> and <c>{Counts}</c> are filled in; null for the file's name.</summary>
    public string? Title { get; init; }

    /// <summary>The date in the title block; null for today.</summary>
    public DateTime? Date { get; init; }

    /// <summary>What gets a cell.</summary>
    public SheetContent Content { get; init; }

    /// <summary>The order of the cells.</summary>
    public SheetArrangement Arrangement { get; init; }

    /// <summary>How a part is shown.</summary>
    public SheetView View { get; init; }

    /// <summary>How large parts are shown.</summary>
    public SheetScale Scale { get; init; }

    /// <summary>Whether parts smaller than their cell are enlarged, by whole numbers and with hard pixels.</summary>
    public bool Enlarge { get; init; }

    /// <summary>What the parts stand on.</summary>
    public SheetBackground Background { get; init; } = SheetBackground.Grey;

    /// <summary>Overwrite files that exist.</summary>
    public bool Force { get; init; }

    /// <summary>Layers decoded at a time; null for one per processor.</summary>
    public int? Parallelism { get; init; }

    /// <summary>Told, from any thread, how many cells of how many are drawn.</summary>
    public Action<int, int>? Progress { get; init; }

    /// <summary>Finds the font files of the machine.</summary>
    internal Func<IReadOnlyList<string>> ListFonts { get; init; } = FontFolders.ListFiles;

    /// <exception cref="SheetException">A value is out of its range.</exception>
    internal void Validate(string path)
    {
        if (CellSize is < SmallestCell or > LargestCell)
        {
            throw SheetException.Refuse(path, FormattableString.Invariant($"A cell of {CellSize} px is out of range."),
                FormattableString.Invariant($"Use {SmallestCell} to {LargestCell}."));
        }

        if (Columns is < 1) throw SheetException.Refuse(path, "A sheet needs at least one column.", "Use 1 or more, or leave it out.");
        if (Margin is < 0 or > LargestMargin) throw SheetException.Refuse(path, FormattableString.Invariant($"A margin of {Margin} is out of range."), FormattableString.Invariant($"Use 0 to {LargestMargin}."));
        if (Parallelism is < 1) throw SheetException.Refuse(path, "At least one layer must be decoded at a time.", "Use 1 or more, or leave it out.");
    }
}
