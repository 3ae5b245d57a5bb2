using LayerTools.Model;

namespace LayerTools.Pixels.Compositing.Masks;

/// <summary>A mask whose samples are stored, and how it works.</summary>
/// <param name="Role">Its channel.</param>
/// <param name="Bounds">Where it has samples, canvas px.</param>
/// <param name="DefaultColor">Its value everywhere else, 0 to 255.</param>
/// <param name="IsInverted">Whether 255 hides.</param>
/// <param name="Density">How strongly it works, 0 to 1.</param>
/// <param name="Feather">Softness of its edges, px; see <see cref="GaussianBlur"/>.</param>
internal sealed record StoredMask(PlaneRole Role, Bounds Bounds, byte DefaultColor, bool IsInverted, float Density, double Feather = 0)
{
    /// <summary>The value where the mask has no samples, 0 to 1.</summary>
    public float Outside => DefaultColor / (float)byte.MaxValue;

    /// <summary>Whether nothing is seen where the mask has no samples.</summary>
    public bool HidesOutside => Weigh(Outside) == 0f;

    /// <summary>What a sample lets through, 0 to 1. A mask of less than full density hides less.</summary>
    public float Weigh(float sample) => 1f - (Density * (IsInverted ? sample : 1f - sample));
}
