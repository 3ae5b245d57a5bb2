using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>One change that a plan holds.</summary>
/// <param name="Layer">The layer; null for the file itself.</param>
/// <param name="Property">What changes.</param>
/// <param name="Old">The value before; null for something new.</param>
/// <param name="New">The value after; null for something removed.</param>
public sealed record EditStep(Layer? Layer, string Property, string? Old, string? New)
{
    /// <summary>The layer's path when the plan was made.</summary>
    public string LayerPath { get; } = Layer?.LayerPath ?? string.Empty;
}
