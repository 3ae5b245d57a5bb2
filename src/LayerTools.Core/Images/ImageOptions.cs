using LayerTools.Formats;

namespace LayerTools.Images;

/// <summary>How pictures of layers and files are written.</summary>
public sealed record ImageOptions
{
    /// <summary>Make each part's picture as large as the canvas instead of as large as the layer's rectangle.</summary>
    public bool Canvas { get; init; }

    /// <summary>Leave the layers' masks out, so that what they hide is seen.</summary>
    public bool NoMask { get; init; }

    /// <summary>Overwrite files that exist.</summary>
    public bool Force { get; init; }

    /// <summary>Limits, of which the number of pixels matters here.</summary>
    public ReadLimits Limits { get; init; } = ReadLimits.Default;

    /// <summary>Told, from any thread, how many pictures of how many are done.</summary>
    public Action<int, int>? Progress { get; init; }

    /// <summary>Pictures drawn at the same time; null for one per processor.</summary>
    public int? Parallelism { get; init; }
}
