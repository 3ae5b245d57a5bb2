using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Measures.Symmetry;

/// <summary>What is compared: a part and its opposite, a part in the middle, or, without any part, the figure.</summary>
/// <param name="Kind">Which of these it is.</param>
/// <param name="Part">The left or central part; null for the figure.</param>
/// <param name="Opposite">The part on the other side.</param>
internal sealed record SymmetryItem(SymmetryKind Kind, Layer? Part, Layer? Opposite)
{
    public static readonly SymmetryItem Figure = new(SymmetryKind.Figure, null, null);

    /// <summary>The pairs and central parts among chosen parts, in their order; a pair comes once, where the first of the two stands.</summary>
    public static IReadOnlyList<SymmetryItem> Arrange(LayerFile file, IEnumerable<Layer> parts)
    {
        var opposites = new Opposites(file);
        return [.. parts.Select(Find).Distinct()];

        SymmetryItem Find(Layer part)
        {
            var side = Opposites.SideOf(part);
            if (side == Side.None) return new SymmetryItem(SymmetryKind.Central, part, null);
            var opposite = opposites.FindAcross(part);
            return side == Side.Right && opposite is not null ? new SymmetryItem(SymmetryKind.Pair, opposite, part) : new SymmetryItem(SymmetryKind.Pair, part, opposite);
        }
    }
}
