using LayerTools.Formats;

namespace LayerTools.Measures.Symmetry;

/// <summary>How symmetry is measured.</summary>
public sealed record SymmetryOptions
{
    /// <summary>Limits, of which the memory for one picture matters here.</summary>
    public ReadLimits Limits { get; init; } = ReadLimits.Default;

    /// <summary>Told, from any thread, how much of how much is measured.</summary>
    public Action<int, int>? Progress { get; init; }

    /// <summary>Pairs and parts measured at the same time, at most 4; null for one per processor.</summary>
    public int? Parallelism { get; init; }
}
