namespace LayerTools.Model.Fills;

/// <summary>A picture to be repeated: samples 0 to 1, row by row.</summary>
/// <param name="Width">Columns, px, at least 1.</param>
/// <param name="Height">Rows, px, at least 1.</param>
/// <param name="Colors">One array for grey, three for red, green, blue.</param>
/// <param name="Alpha">Opacity; null for a picture that is opaque everywhere.</param>
internal sealed record Pattern(int Width, int Height, IReadOnlyList<float[]> Colors, float[]? Alpha);
