using LayerTools.Model;

namespace LayerTools.Deliveries;

/// <summary>What happened to one layer or group between two deliveries. Plain values, so that tables, CSV and JSON stay readable.</summary>
public sealed record LayerDifference
{
    /// <summary>What happened.</summary>
    public required LayerChange Change { get; init; }

    /// <summary>The layer's path in the new file, or in the old one if it was removed.</summary>
    public required string LayerPath { get; init; }

    /// <summary>Its path in the old file; null if it was added.</summary>
    public string? OldLayerPath { get; init; }

    /// <summary>Its number in the new file, 1 = front-most; null if it was removed.</summary>
    public int? LayerNumber { get; init; }

    /// <summary>Its number in the old file; null if it was added.</summary>
    public int? OldLayerNumber { get; init; }

    /// <summary>Why a rig that was made for the old file would lose the layer or put it elsewhere, as a sentence; null if it would not.</summary>
    public string? Breaks { get; init; }

    /// <summary>How far its pixels moved to the right, px; null if they did not.</summary>
    public int? MovedRight { get; init; }

    /// <summary>How far they moved down, px.</summary>
    public int? MovedDown { get; init; }

    /// <summary>How wide its painted pixels are against before, %; null if they were not resized.</summary>
    public double? WidthPercent { get; init; }

    /// <summary>How tall they are against before, %.</summary>
    public double? HeightPercent { get; init; }

    /// <summary>How many of the pixels that are painted in any of both differ, %; null where pixels were not compared or are the same.</summary>
    public double? RepaintedPercent { get; init; }

    /// <summary>The largest difference of a pixel, premultiplied, in levels of 255.</summary>
    public int? LargestDifference { get; init; }

    /// <summary>The rectangle of the pixels that differ, canvas px of the new file.</summary>
    public Bounds? ChangedBox { get; init; }

    /// <summary>By what it was found again.</summary>
    public required MatchEvidence MatchedBy { get; init; }

    /// <summary>The new file.</summary>
    public required string FilePath { get; init; }

    /// <summary>The old file.</summary>
    public required string ReferencePath { get; init; }
}
