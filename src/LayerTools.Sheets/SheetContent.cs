namespace LayerTools.Sheets;

/// <summary>What gets a cell of its own.</summary>
public enum SheetContent
{
    /// <summary>Each part.</summary>
    Part,

    /// <summary>Each group, its layers drawn together.</summary>
    Group,

    /// <summary>Each file, drawn whole.</summary>
    File,
}
