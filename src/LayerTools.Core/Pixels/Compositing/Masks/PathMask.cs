using LayerTools.Model;

namespace LayerTools.Pixels.Compositing.Masks;

/// <summary>A vector mask that is filled anew.</summary>
/// <param name="Path">Its path.</param>
/// <param name="Density">How strongly it works, 0 to 1.</param>
/// <param name="Feather">Softness of its edge, px; see <see cref="GaussianBlur"/>.</param>
internal sealed record PathMask(VectorPath Path, float Density, double Feather);
