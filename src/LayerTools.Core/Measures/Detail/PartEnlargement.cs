namespace LayerTools.Measures.Detail;

/// <summary>Whether a part was enlarged after it was drawn.</summary>
public sealed record PartEnlargement
{
    /// <summary>The file.</summary>
    public required string FilePath { get; init; }

    /// <summary>The layer's path.</summary>
    public required string LayerPath { get; init; }

    /// <summary>The layer's number, 1 = front-most.</summary>
    public required int LayerNumber { get; init; }

    /// <summary>The layer's name.</summary>
    public required string Name { get; init; }

    /// <summary>By how much it was enlarged: 2 = every pixel became 2 × 2; 1 = not at all; null if it cannot be told.</summary>
    public required double? Factor { get; init; }

    /// <summary>How sure that is, 0 to 1; 0 without a factor.</summary>
    public required double Certainty { get; init; }

    /// <summary>Where the spectrum falls off, 0 to 100 % of the sampling limit (half a cycle per px); null without detail.</summary>
    public required double? DetailPercent { get; init; }

    /// <summary>Why, as a sentence.</summary>
    public required string Reason { get; init; }
}
