using System.Numerics;

namespace LayerTools.Pixels.Compositing.Blending;

/// <summary>The mixing of one colour channel, B(cb, cs) of W3C Compositing and Blending Level 1. Arguments and result are not premultiplied, 0 to 1.</summary>
internal interface IBlendFunction
{
    Vector<float> Blend(Vector<float> backdrop, Vector<float> source);
}
