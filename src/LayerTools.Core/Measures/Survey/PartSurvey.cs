using LayerTools.Model;

namespace LayerTools.Measures.Survey;

/// <summary>What the pixels of one part say. Masks count, opacity does not. Lengths in canvas px, areas in px².</summary>
public sealed record PartSurvey
{
    /// <summary>The most faint alpha that still counts as nearly invisible: 7 of 255.</summary>
    public const byte Faint = 7;

    /// <summary>The least alpha that counts as covered: half of 255.</summary>
    public const byte Covering = 128;

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

    /// <summary>Regions inside the part, enclosed by covered pixels, that are neither clear (alpha 0) nor covered: the largest first, likewise.</summary>
    public required IReadOnlyList<PartRegion> Holes { get; init; }

    /// <summary>Which pixels have alpha of <see cref="Covering"/> and more.</summary>
    public required CoverageMap Coverage { get; init; }
}
