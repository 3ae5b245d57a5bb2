using LayerTools.Model;

namespace LayerTools.Measures.Survey;

/// <summary>What the pixels of one part say: alpha of 8 bits, deeper ones rounded. Masks count, opacity and effects do not. Lengths in canvas px, areas in px².</summary>
public sealed record PartSurvey
{
    /// <summary>The most faint alpha that still counts as nearly invisible: 7 of 255.</summary>
    public const byte Faint = 7;

    /// <summary>The least alpha that counts as covered: half of 255.</summary>
    public const byte Covering = 128;

    /// <summary>The least alpha that counts as solid: 230 of 255, so that less than a tenth of what lies behind shows through.</summary>
    public const byte Solid = 230;

    /// <summary>The layer.</summary>
    public required Layer Layer { get; init; }

    /// <summary>What the part is for.</summary>
    public required LayerRole Role { get; init; }

    /// <summary>The box of all pixels with alpha above 0.</summary>
    public required Bounds Painted { get; init; }

    /// <summary>The box of all pixels with alpha above <see cref="Faint"/>.</summary>
    public required Bounds Seen { get; init; }

    /// <summary>Pixels with alpha above 0.</summary>
    public required long PaintedArea { get; init; }

    /// <summary>Pixels with alpha 1 to <see cref="Faint"/>.</summary>
    public required long FaintArea { get; init; }

    /// <summary>Pixels with alpha above 0 outside the canvas.</summary>
    public required long OutsideArea { get; init; }

    /// <summary>The centre of gravity of alpha; NaN for an empty part.</summary>
    public required double CenterX { get; init; }

    /// <inheritdoc cref="CenterX"/>
    public required double CenterY { get; init; }

    /// <summary>Islands of pixels above <see cref="Faint"/> that touch at sides or corners, the largest first; at most <see cref="IslandFinder.MostBoxes"/>.</summary>
    public required IReadOnlyList<PartRegion> Islands { get; init; }

    /// <summary>How many islands there are in all.</summary>
    public required int IslandCount { get; init; }

    /// <summary>
    /// Half-transparent spots in filled areas, the largest first; at most <see cref="IslandFinder.MostBoxes"/>. Each is a region of pixels above <see cref="Faint"/> but
    /// below <see cref="Solid"/> that touch at sides or corners and that solid pixels enclose on all sides. A region that reaches the outside is a soft edge, and one
    /// that touches a clear pixel inside is the rim of an opening; both may be meant and are no holes.
    /// </summary>
    public required IReadOnlyList<PartRegion> Holes { get; init; }

    /// <summary>How many holes there are in all.</summary>
    public required int HoleCount { get; init; }

    /// <summary>The pixels of all holes.</summary>
    public required long HoleArea { get; init; }

    /// <summary>Which pixels have alpha of <see cref="Covering"/> and more; its rectangle is the smallest that holds them.</summary>
    public required CoverageMap Coverage { get; init; }

    /// <summary>Whether it is a part of the figure that is cut out as one: neither a sketch or the like nor a fill over the whole canvas.</summary>
    public bool IsPart => Role == LayerRole.Part && Layer.Kind != LayerKind.Fill;

    /// <summary>Whether nothing is seen of it.</summary>
    public bool IsEmpty => Seen.IsEmpty;
}
