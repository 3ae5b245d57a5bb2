using System.Numerics;
using System.Runtime.CompilerServices;

namespace LayerTools.Pixels.Compositing.Blending;

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

    /// <summary>αo = αb + αs·(1 − αb), the same for every mode but those that weigh αs themselves.</summary>
    protected static void MixAlpha(float[] target, int at, float[] source, int count)
    {
        for (var i = 0; i < count; i += Vector<float>.Count)
        {
            var below = new Vector<float>(target, at + i);
            (below + (new Vector<float>(source, i) * (Vector<float>.One - below))).CopyTo(target, at + i);
        }
    }

    /// <summary>
    /// One premultiplied channel of the result: co = cb·(1 − αs) + αs·(αb·B(Cb, Cs) + (1 − αb)·Cs); inside the target without the last term, since
    /// nothing is seen where the target is not (W3C Compositing and Blending Level 1, 'General Formula').
    /// </summary>
    /// <param name="below">cb, premultiplied.</param>
    /// <param name="alphaBelow">αb.</param>
    /// <param name="color">Cs.</param>
    /// <param name="mixed">B(Cb, Cs).</param>
    /// <param name="alpha">αs.</param>
    /// <param name="isInside">Whether the source only changes the target's colour.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    protected static Vector<float> Join(Vector<float> below, Vector<float> alphaBelow, Vector<float> color, Vector<float> mixed, Vector<float> alpha, bool isInside)
    {
        var seen = mixed * alphaBelow;
        if (!isInside) seen += color * (Vector<float>.One - alphaBelow);
        return (below * (Vector<float>.One - alpha)) + (seen * alpha);
    }

    /// <summary>Undoes premultiplication; what is fully transparent has no colour and becomes 0.</summary>
    protected static Vector<float> Straighten(Vector<float> premultiplied, Vector<float> alpha) =>
        Vector.ConditionalSelect(Vector.GreaterThan(alpha, Vector<float>.Zero), premultiplied / alpha, Vector<float>.Zero);
}
