namespace LayerTools.Sheets;

/// <summary>How a contact sheet looks and how it is written.</summary>
public sealed record SheetOptions
{
    /// <summary>Smallest side of a cell, px.</summary>
    public const int SmallestCell = 64;

    /// <summary>Largest side of a cell, px.</summary>
    public const int LargestCell = 2048;

    /// <summary>Side of the square that a part is fitted into, px at 100 %: 64 to 2048.</summary>
    public int CellSize { get; init; } = 320;

    /// <summary>Cells side by side, 1 or more; null lets the sheet choose. A sheet never has more columns than parts.</summary>
    public int? Columns { get; init; }

    /// <summary>What the parts stand on.</summary>
    public SheetBackground Background { get; init; } = SheetBackground.Grey;

    /// <summary>Overwrite files that exist.</summary>
    public bool Force { get; init; }

    /// <summary>Layers decoded at a time; null for one per processor.</summary>
    public int? Parallelism { get; init; }

    /// <exception cref="SheetException">A value is out of its range.</exception>
    internal void Validate(string path)
    {
        if (CellSize is < SmallestCell or > LargestCell)
        {
            throw SheetException.Refuse(path, FormattableString.Invariant($"A cell of {CellSize} px is out of range."),
                FormattableString.Invariant($"Use {SmallestCell} to {LargestCell}."));
        }

        if (Columns is < 1) throw SheetException.Refuse(path, "A sheet needs at least one column.", "Use 1 or more, or leave it out.");
        if (Parallelism is < 1) throw SheetException.Refuse(path, "At least one layer must be decoded at a time.", "Use 1 or more, or leave it out.");
    }
}
