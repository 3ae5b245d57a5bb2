namespace LayerTools.Measures.Cover;

/// <summary>How much of a part is seen, and how far it is painted on underneath all neighbours that cover it. Plain values. Lengths and places in canvas px, areas in px², inside the canvas.</summary>
public sealed record PartCover
{
    /// <summary>The file.</summary>
    public required string FilePath { get; init; }

    /// <summary>The part's number, 1 = front-most.</summary>
    public required int LayerNumber { get; init; }

    /// <summary>The part's path.</summary>
    public required string LayerPath { get; init; }

    /// <summary>What the part covers: pixels with alpha 128 and more.</summary>
    public required long Area { get; init; }

    /// <summary>What of it no part in front hides.</summary>
    public required long VisibleArea { get; init; }

    /// <summary>What of it is hidden.</summary>
    public required long HiddenArea { get; init; }

    /// <summary>Visible area, per cent of the area, to a tenth; null for a part without any.</summary>
    public required double? VisiblePercent { get; init; }

    /// <summary>How many parts cover any of it.</summary>
    public required int NeighbourCount { get; init; }

    /// <summary>The seams with all neighbours, px; see <see cref="SeamCover.SeamLength"/>.</summary>
    public int SeamLength { get; init; }

    /// <summary>How much of them would open, px; see <see cref="SeamCover.ShallowLength"/>.</summary>
    public int ShallowLength { get; init; }

    /// <summary>The smallest depth along all seams, px; null without a seam.</summary>
    public double? SmallestDepth { get; init; }

    /// <summary>The median depth along all seams, px; null without a seam.</summary>
    public double? MedianDepth { get; init; }

    /// <summary>The path of the neighbour with the longest stretch that would open; null if none would.</summary>
    public string? WorstNeighbour { get; init; }

    /// <summary>How far the part should be painted on, px.</summary>
    public required double WantedDepth { get; init; }

    /// <summary>Up to where depths were measured, px.</summary>
    public required int MaximumDepth { get; init; }
}
