using LayerTools.Model;

namespace LayerTools.Deliveries;

/// <summary>
/// What a layer holds, apart from its name and its place in the stack. Equal fingerprints mean equal content, however the channels are packed;
/// the place on the canvas is apart, so that a move is told from a repaint. Colours of fully transparent pixels do not count.
/// </summary>
internal sealed record PartContent
{
    /// <summary>Fingerprint of the painted pixels, or of what describes them; empty for a layer without any.</summary>
    public required string Pixels { get; init; }

    /// <summary>Fingerprint of the masks as they lie on the pixels; empty for a layer without any.</summary>
    public required string Mask { get; init; }

    /// <summary>The smallest rectangle that holds all pixels that are not fully transparent, canvas px.</summary>
    public required Bounds Painted { get; init; }

    /// <summary>What the pixels look like when seen from afar; null for a layer without any.</summary>
    public PartLook? Look { get; init; }

    public bool IsEmpty => Pixels.Length == 0;
}
