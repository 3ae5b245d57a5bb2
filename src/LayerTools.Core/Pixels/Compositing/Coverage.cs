namespace LayerTools.Pixels.Compositing;

/// <summary>How opaque a run of pixels is.</summary>
internal enum Coverage
{
    /// <summary>All transparent.</summary>
    None,

    /// <summary>Not the same everywhere, or not known.</summary>
    Some,

    /// <summary>All opaque.</summary>
    Full,
}
