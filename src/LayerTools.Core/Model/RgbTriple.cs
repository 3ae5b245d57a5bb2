namespace LayerTools.Model;

/// <summary>A number for each of red, green and blue.</summary>
internal readonly record struct RgbTriple(double Red, double Green, double Blue);
