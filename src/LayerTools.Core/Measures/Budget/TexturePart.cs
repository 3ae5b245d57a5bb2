namespace LayerTools.Measures.Budget;

/// <summary>A part on a page of textures.</summary>
public sealed record TexturePart
{
    /// <summary>The file.</summary>
    public required string FilePath { get; init; }

    /// <summary>The layer's path.</summary>
    public required string LayerPath { get; init; }

    /// <summary>The layer's number, 1 = front-most.</summary>
    public required int LayerNumber { get; init; }

    /// <summary>The layer's name.</summary>
    public required string Name { get; init; }

    /// <summary>The number of its page, 1 = first.</summary>
    public required int Page { get; init; }

    /// <summary>First column of its box on the page, px.</summary>
    public required int Left { get; init; }

    /// <summary>First row of its box on the page, px.</summary>
    public required int Top { get; init; }

    /// <summary>Columns of its painted box on the canvas, px; its rows on the page if it is turned.</summary>
    public required int Width { get; init; }

    /// <summary>Rows of its painted box on the canvas, px.</summary>
    public required int Height { get; init; }

    /// <summary>Whether it is turned by 90° clockwise.</summary>
    public required bool Turned { get; init; }

    /// <summary>Memory of its box, MB: columns × rows × 4 bytes / 2^20.</summary>
    public required double MemoryMB { get; init; }

    /// <summary>Its share of the area of all boxes, 0 to 100 %.</summary>
    public required double SharePercent { get; init; }

    /// <summary>How much of its box is painted, 0 to 100 %; a low one says that the box is mostly air.</summary>
    public required double PaintedPercent { get; init; }
}
