namespace LayerTools.Deliveries;

/// <summary>What happened to the pixels and masks of one layer.</summary>
internal sealed record ContentDifference
{
    /// <summary>Any of <see cref="LayerChange.Moved"/>, <see cref="LayerChange.Resized"/>, <see cref="LayerChange.Repainted"/> and <see cref="LayerChange.Masked"/>.</summary>
    public LayerChange Change { get; init; }

    /// <summary>How far it moved, px.</summary>
    public (int Right, int Down) Shift { get; init; }

    /// <summary>New size against the old one, %; null unless it was resized.</summary>
    public (double Width, double Height)? Percent { get; init; }

    /// <summary>How the pixels differ; null unless it was repainted and pixels could be compared.</summary>
    public PixelDifference? Pixels { get; init; }
}
