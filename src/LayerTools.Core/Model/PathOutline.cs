namespace LayerTools.Model;

/// <summary>One outline of a path: cubic Bézier curves from knot to knot.</summary>
/// <param name="Operation">How it joins those before; null if it is a part of the same shape as the outline before, in which overlaps are holes.</param>
/// <param name="Knots">Its points, in order.</param>
/// <param name="IsClosed">Whether a curve leads from the last knot to the first; otherwise a fill ends there in a straight line.</param>
internal sealed record PathOutline(PathOperation? Operation, IReadOnlyList<PathKnot> Knots, bool IsClosed = true);
