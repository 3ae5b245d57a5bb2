using LayerTools.Model;

namespace LayerTools.Pixels.Compositing;

/// <summary>Which of a layer's mask channels takes part in its picture, and how.</summary>
/// <param name="Role">The channel.</param>
/// <param name="Bounds">Where it has samples, canvas px.</param>
/// <param name="DefaultColor">Its value everywhere else, 0 to 255.</param>
/// <param name="IsInverted">Whether 255 hides.</param>
/// <param name="Density">How strongly it works, 0 to 1.</param>
internal sealed record StoredMask(PlaneRole Role, Bounds Bounds, byte DefaultColor, bool IsInverted, float Density)
{
    /// <summary>Whether nothing is seen where the mask has no samples.</summary>
    public bool HidesOutside => Weigh(DefaultColor / (float)byte.MaxValue) == 0f;

    /// <summary>What a sample lets through, 0 to 1. A mask of less than full density hides less.</summary>
    public float Weigh(float sample) => 1f - (Density * (IsInverted ? sample : 1f - sample));

    /// <summary>
    /// The mask that counts; null if there is none or it is switched off. A vector mask arrives here as samples that the writing program
    /// rendered into the user mask's channel (flag 8). A shape's own pixels are cut out by its path already, so that for a shape only
    /// the mask painted by hand is left, which then has a channel of its own. (Observed: files drawn so agree with their merged pictures.)
    /// </summary>
    public static StoredMask? Find(Layer layer)
    {
        if (layer.Mask is not { } mask) return null;
        var density = (mask.UserDensity ?? byte.MaxValue) / (float)byte.MaxValue;
        if (layer.Kind == LayerKind.Shape && mask.IsRendered)
        {
            if (mask.PaintedBounds is not { } bounds || (mask.PaintedFlags & LayerMask.DisabledFlag) != 0) return null;
            return new StoredMask(PlaneRole.PaintedMask, bounds, mask.PaintedDefaultColor, (mask.PaintedFlags & LayerMask.InvertedFlag) != 0, density);
        }

        return mask.IsDisabled ? null : new StoredMask(PlaneRole.UserMask, mask.Bounds, mask.DefaultColor, mask.IsInverted, density);
    }
}
