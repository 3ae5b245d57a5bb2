using System.Numerics;

namespace LayerTools.Pixels.Compositing.Blending;

/// <summary>What fill opacity does in the modes where it works before the formula.</summary>
internal interface IFillFunction
{
    /// <summary>The mixed colour of an opaque backdrop and a source filled to <paramref name="fill"/>; at 1 it is the mode's own, at 0 the backdrop.</summary>
    Vector<float> Blend(Vector<float> backdrop, Vector<float> source, Vector<float> fill);
}
