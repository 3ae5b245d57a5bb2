namespace LayerTools.Measures.Symmetry;

/// <summary>How well a pair, a central part or the whole figure agrees with its reflection. Plain values, so that tables, CSV and JSON stay readable.</summary>
public sealed record LayerSymmetry
{
    /// <summary>What was compared.</summary>
    public required SymmetryKind Kind { get; init; }

    /// <summary>The left part, or the central one; empty for the figure.</summary>
    public required string LayerPath { get; init; }

    /// <summary>Its number, 1 = front-most; null for the figure.</summary>
    public required int? LayerNumber { get; init; }

    /// <summary>The part on the other side; empty for central parts and the figure, and where there is none.</summary>
    public required string OppositePath { get; init; }

    /// <summary>Its number; null where there is none.</summary>
    public required int? OppositeNumber { get; init; }

    /// <summary>
    /// Intersection over union of coverage, %, of one against the reflection of the other across the canvas axis: 100 · Σ min(a, b) / Σ max(a, b) over all pixels,
    /// where a and b are the opacities, 0 to 1, of a pixel and of the reflected one. 100 where the outlines agree exactly; null where nothing could be compared.
    /// </summary>
    public double? Iou { get; init; }

    /// <summary>
    /// Mean CIEDE2000 over the pixels that both cover, reflected across the canvas axis: Σ min(a, b) · ΔE00 / Σ min(a, b). About 1 is just seen. Null where they share no pixel.
    /// </summary>
    public double? ColorDifference { get; init; }

    /// <summary>x of the upright axis that fits best, canvas px, right to 0.1: there Σ a·b is largest, and so the sum of squared differences smallest. Null where no axis makes them meet.</summary>
    public double? Axis { get; init; }

    /// <summary>x of the canvas axis, px: half the width.</summary>
    public required double CanvasAxis { get; init; }

    /// <summary><see cref="Axis"/> less <see cref="CanvasAxis"/>, px; above 0 it lies to the right.</summary>
    public double? AxisOffset => Axis is { } axis ? Math.Round(axis - CanvasAxis, 2) + 0.0 : null;

    /// <summary>The same as <see cref="Iou"/>, across the upright axis that fits best, to the nearest half pixel.</summary>
    public double? BestIou { get; init; }

    /// <summary>
    /// Tilt of the axis that fits best if it may lean, degrees from upright, −45 to 45; above 0 its top leans to the right. Right to 0.2 where halves agree. Null where no axis stands out,
    /// see <see cref="Note"/>.
    /// </summary>
    public double? Angle { get; init; }

    /// <summary>How well both agree across the axis that may lean, %, on a copy of at most 288 px: 100 · Σ a·b / (Σ a² + Σ b² − Σ a·b). Where it is little more than <see cref="BestIou"/>, the tilt says little.</summary>
    public double? AngleIou { get; init; }

    /// <summary>Columns of the painted box of the left part less those of its opposite, px; null for central parts and the figure.</summary>
    public int? WidthDifference { get; init; }

    /// <summary>Rows, likewise.</summary>
    public int? HeightDifference { get; init; }

    /// <summary>Covered area of the left part less that of its opposite, % of the larger one.</summary>
    public double? AreaDifference { get; init; }

    /// <summary>The file.</summary>
    public required string FilePath { get; init; }

    /// <summary>Why figures are missing, as sentences; empty if none is.</summary>
    public required string Note { get; init; }
}
