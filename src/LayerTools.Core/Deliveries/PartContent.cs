using System.Diagnostics.CodeAnalysis;

namespace LayerTools.Deliveries;

/// <summary>
/// What a layer holds, apart from its name and its place in the stack. Equal fingerprints mean equal content, however the channels are packed;
/// the place on the canvas is apart, so that a move is told from a repaint. Colours of fully transparent pixels do not count.
/// </summary>
internal sealed record PartContent : PartOutline
{
    [SetsRequiredMembers]
    public PartContent(PartOutline outline, string pixels, PartLook? look)
        : base(outline) => (Pixels, Look) = (pixels, look);

    /// <summary>Fingerprint of the painted pixels, or of what describes them; empty for a layer without any.</summary>
    public string Pixels { get; }

    /// <summary>What the pixels look like when seen from afar; null for a layer without any, or where nobody asked.</summary>
    public PartLook? Look { get; }

    public bool IsEmpty => Pixels.Length == 0;
}
