namespace LayerTools.Measures.Cover;

/// <summary>
/// How far a part is painted on underneath one neighbour that covers it. Plain values. Lengths and places in canvas px, areas in px², inside the canvas.
/// The seam is made of the visible pixels of the part that have a pixel of the neighbour at one of their four sides. Each pixel that the neighbour covers and the part does not belongs to
/// the pixel nearest to it among those that the neighbour leaves free and to those of the seam up to 2 px beside that. The depth at a pixel of the seam is the least distance at which a pixel that belongs to it lies from the one nearest to that, less 1 px: 0 where the
/// part ends at the neighbour's edge. So a part needs to reach to the middle of a narrow neighbour only. Where a part's own outline runs underneath the neighbour, as at both ends of a
/// seam, depths are small by nature: pixels do not count that are nearer to open ground (neither part nor neighbour) than 2 px + 6 × (depth + 1 px), at
/// most 62 px, or 2 px + 2 × (depth + 1 px) where that is more (8 px where no unpainted pixel belongs to them), unless the whole seam is like that; then those count that are at least half as far from open ground as the farthest.
/// </summary>
public sealed record SeamCover
{
    /// <summary>The file.</summary>
    public required string FilePath { get; init; }

    /// <summary>The part's number, 1 = front-most.</summary>
    public required int LayerNumber { get; init; }

    /// <summary>The part's path.</summary>
    public required string LayerPath { get; init; }

    /// <summary>The number of the neighbour that covers it.</summary>
    public required int NeighbourNumber { get; init; }

    /// <summary>The path of the neighbour.</summary>
    public required string Neighbour { get; init; }

    /// <summary>What of the part is not hidden by any part.</summary>
    public required long VisibleArea { get; init; }

    /// <summary>What of the part is hidden by any part.</summary>
    public required long HiddenArea { get; init; }

    /// <summary>What of the part lies underneath this neighbour.</summary>
    public required long OverlapArea { get; init; }

    /// <summary>The pixels of the seam, its ends included; 0 where the part shows nowhere beside the neighbour.</summary>
    public required int SeamLength { get; init; }

    /// <summary>The pixels of the seam that count: all but its ends.</summary>
    public required int CountedLength { get; init; }

    /// <summary>The pixels of the seam that count and are less deep than wanted: so much of it would open.</summary>
    public required int ShallowLength { get; init; }

    /// <summary>The smallest depth, px, to a hundredth; null without a seam.</summary>
    public required double? SmallestDepth { get; init; }

    /// <summary>The median depth of the pixels that count, px, to a hundredth; null without a seam.</summary>
    public required double? MedianDepth { get; init; }

    /// <summary>The column of the smallest depth, in the middle of those that are as small; null without a seam.</summary>
    public required int? X { get; init; }

    /// <summary>Its row.</summary>
    public required int? Y { get; init; }

    /// <summary>How far the part should be painted on, px.</summary>
    public required double WantedDepth { get; init; }

    /// <summary>Up to where depths were measured, px.</summary>
    public required int MaximumDepth { get; init; }
}
