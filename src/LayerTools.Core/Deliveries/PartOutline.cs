using LayerTools.Model;

namespace LayerTools.Deliveries;

/// <summary>Where a layer is painted, and its masks.</summary>
internal record PartOutline
{
    /// <summary>Fingerprint of the masks as they lie on the pixels; empty for a layer without any.</summary>
    public required string Mask { get; init; }

    /// <summary>Fingerprint of the masks alone, wherever they lie; empty for a layer without any.</summary>
    public required string MaskShape { get; init; }

    /// <summary>Where the masks lie, canvas px; 0, 0 for masks without a place.</summary>
    public required (int X, int Y) MaskPlace { get; init; }

    /// <summary>The smallest rectangle that holds all pixels that are not fully transparent, canvas px.</summary>
    public required Bounds Painted { get; init; }

    /// <summary>Whether both have the same masks when this one's are moved.</summary>
    public bool HasMaskOf(PartOutline other, int right, int down) =>
        MaskShape == other.MaskShape && (MaskShape.Length == 0 || (MaskPlace.X + right, MaskPlace.Y + down) == other.MaskPlace);
}
