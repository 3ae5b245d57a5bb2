namespace LayerTools.Pixels.Compositing.Masks;

/// <summary>Where a horizontal line meets an outline of a shape.</summary>
/// <param name="X">Canvas column, px, with its fraction.</param>
/// <param name="Shape">Number of the shape.</param>
internal readonly record struct PathCrossing(double X, int Shape);
