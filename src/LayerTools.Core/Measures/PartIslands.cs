using LayerTools.Model;

namespace LayerTools.Measures;

/// <summary>A part that is painted in several places which do not touch: often two parts on one layer, or stray strokes.</summary>
public sealed record PartIslands
{
    /// <summary>The file.</summary>
    public required string FilePath { get; init; }

    /// <summary>The layer's path.</summary>
    public required string LayerPath { get; init; }

    /// <summary>The layer's number, 1 = front-most.</summary>
    public required int LayerNumber { get; init; }

    /// <summary>The layer's name.</summary>
    public required string Name { get; init; }

    /// <summary>How many islands there are.</summary>
    public required int Count { get; init; }

    /// <summary>The smallest island, px².</summary>
    public required long SmallestArea { get; init; }

    /// <summary>The rectangle of each of the largest islands, canvas px, the largest island first; at most <see cref="IslandFinder.MostBoxes"/>.</summary>
    public required IReadOnlyList<Bounds> Boxes { get; init; }

    /// <summary>The painted pixels of each, in the order of <see cref="Boxes"/>, px².</summary>
    public required IReadOnlyList<long> Areas { get; init; }
}
