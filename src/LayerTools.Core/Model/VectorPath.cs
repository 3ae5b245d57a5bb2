namespace LayerTools.Model;

/// <summary>The path of a vector mask.</summary>
/// <param name="Outlines">Its outlines, from the first to the last.</param>
/// <param name="IsFilledWhenEmpty">What a path without outlines lets through: all, or nothing.</param>
/// <param name="IsInverted">Whether the mask shows what lies outside the path.</param>
/// <param name="IsDisabled">Whether the mask is switched off.</param>
internal sealed record VectorPath(IReadOnlyList<PathOutline> Outlines, bool IsFilledWhenEmpty, bool IsInverted, bool IsDisabled);
