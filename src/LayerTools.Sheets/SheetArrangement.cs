namespace LayerTools.Sheets;

/// <summary>The order of the cells.</summary>
public enum SheetArrangement
{
    /// <summary>As the layers came, which is front to back for a whole file.</summary>
    Stack,

    /// <summary>Left and right parts side by side, with a mark where one is missing; then what has no side.</summary>
    Pairs,

    /// <summary>Open parts, then those of which nothing is known, then finished ones, then what does not count.</summary>
    Status,

    /// <summary>Largest rectangle first.</summary>
    Size,
}
