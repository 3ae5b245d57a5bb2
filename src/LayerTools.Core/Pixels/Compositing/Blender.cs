using System.Numerics;

namespace LayerTools.Pixels.Compositing;

/// <summary>
/// Mixes source pixels, which are not premultiplied, into target pixels, which are. Works in whole vectors: up to one vector past
/// <c>count</c> is touched, so the source must be transparent there.
/// </summary>
internal abstract class Blender
{
    /// <summary>The source over the target: the target becomes more opaque where the source is.</summary>
    /// <param name="target">Premultiplied; changed.</param>
    /// <param name="at">Index in the target of the source's first pixel.</param>
    /// <param name="source">Not premultiplied, from index 0.</param>
    /// <param name="count">Pixels.</param>
    public abstract void DrawOver(PixelRow target, int at, PixelRow source, int count);

    /// <summary>The source inside the target: the target's colour changes as if it were opaque, its opacity stays.</summary>
    public abstract void DrawInside(PixelRow target, int at, PixelRow source, int count);

    /// <summary>A last word on the source's opacity, by the pixels' place on the canvas; most modes have none.</summary>
    public virtual void Settle(float[] alpha, int x, int y, int count)
    {
        // Opacity is what layer, masks and opacities make it.
    }

    /// <summary>Undoes premultiplication; what is fully transparent has no colour and becomes 0.</summary>
    protected static Vector<float> Straighten(Vector<float> premultiplied, Vector<float> alpha) =>
        Vector.ConditionalSelect(Vector.GreaterThan(alpha, Vector<float>.Zero), premultiplied / alpha, Vector<float>.Zero);
}
