using LayerTools.Model.Fills;

namespace LayerTools.Model;

/// <summary>A group with a sheet of its own.</summary>
/// <param name="Bounds">The sheet, canvas px, which cuts off the group's layers.</param>
/// <param name="Background">The sheet's colour; null if it is transparent.</param>
internal sealed record Artboard(Bounds Bounds, FillColor? Background);
