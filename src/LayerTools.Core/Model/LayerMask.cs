namespace LayerTools.Model;

/// <summary>
/// A layer's masks, without their samples. Most layers have one channel, -2, painted by hand. Where a vector mask was rendered into that
/// channel (flag 8), the mask painted by hand has a channel of its own, -3, and a rectangle, default colour and flags of its own.
/// </summary>
internal sealed record LayerMask
{
    public const byte DisabledFlag = 2;

    public const byte InvertedFlag = 4;

    public const byte RenderedFlag = 8;

    /// <summary>Where channel -2 has samples, canvas px; outside it has <see cref="DefaultColor"/>.</summary>
    public Bounds Bounds { get; set; }

    /// <summary>0 (hides) or 255 (shows).</summary>
    public byte DefaultColor { get; set; }

    /// <summary>The mask's flag byte: 1 relative to the layer, 2 disabled, 4 inverted, 8 rendered from other data, 16 parameters follow.</summary>
    public byte Flags { get; set; }

    public bool IsDisabled => (Flags & DisabledFlag) != 0;

    public bool IsInverted => (Flags & InvertedFlag) != 0;

    /// <summary>Whether the samples were rendered from a vector mask, together with what was painted by hand.</summary>
    public bool IsRendered => (Flags & RenderedFlag) != 0;

    /// <summary>Whether the file stores density and feather with the mask, be it none of them.</summary>
    public bool HasParameters { get; set; }

    /// <summary>How strongly the mask works, 0 to 255; null where the file does not say.</summary>
    public byte? UserDensity { get; set; }

    /// <summary>Blur of the mask's edge, px.</summary>
    public double? UserFeather { get; set; }

    public byte? VectorDensity { get; set; }

    public double? VectorFeather { get; set; }

    /// <summary>Where the mask painted by hand has samples, if that is channel -3, canvas px; null where there is no such channel.</summary>
    public Bounds? PaintedBounds { get; set; }

    /// <summary>The value of channel -3 outside <see cref="PaintedBounds"/>.</summary>
    public byte PaintedDefaultColor { get; set; }

    /// <summary>The flag byte of channel -3, as <see cref="Flags"/>.</summary>
    public byte PaintedFlags { get; set; }

    /// <summary>Whether blurring or density changes what the samples say.</summary>
    public bool HasSoftening => UserDensity is not (null or 255) || UserFeather is not (null or 0) || HasVectorSoftening;

    /// <summary>Whether blurring or density changes what the vector mask says.</summary>
    public bool HasVectorSoftening => VectorDensity is not (null or 255) || VectorFeather is not (null or 0);
}
