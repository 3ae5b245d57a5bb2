namespace LayerTools.Measures.Budget;

/// <summary>One page of textures.</summary>
public sealed record TexturePage
{
    /// <summary>The file.</summary>
    public required string FilePath { get; init; }

    /// <summary>The page's number, 1 = first.</summary>
    public required int Page { get; init; }

    /// <summary>Columns and rows, px.</summary>
    public required int PageSize { get; init; }

    /// <summary>Parts on it.</summary>
    public required int Parts { get; init; }

    /// <summary>How much of it their boxes take, without padding, 0 to 100 %.</summary>
    public required double FillPercent { get; init; }

    /// <summary>How much of it is painted, 0 to 100 %: boxes of parts hold clear pixels too.</summary>
    public required double PaintedPercent { get; init; }
}
