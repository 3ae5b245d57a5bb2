using System.Numerics;

namespace LayerTools.Pixels.Compositing.Blending;

/// <summary>
/// Fill opacity in eight modes. It draws the source towards the colour that is neutral in the mode, and the formula works on the result. That it
/// does so in these modes is from memory and not in the published format specification.
/// </summary>
internal static class FillFunctions
{
    /// <summary>Towards white.</summary>
    public readonly struct FromWhite<TFunction> : IFillFunction
        where TFunction : struct, IBlendFunction
    {
        public Vector<float> Blend(Vector<float> backdrop, Vector<float> source, Vector<float> fill) =>
            default(TFunction).Blend(backdrop, Vector<float>.One - (fill * (Vector<float>.One - source)));
    }

    /// <summary>Towards black.</summary>
    public readonly struct FromBlack<TFunction> : IFillFunction
        where TFunction : struct, IBlendFunction
    {
        public Vector<float> Blend(Vector<float> backdrop, Vector<float> source, Vector<float> fill) => default(TFunction).Blend(backdrop, fill * source);
    }

    /// <summary>Towards middle grey.</summary>
    public readonly struct FromGrey<TFunction> : IFillFunction
        where TFunction : struct, IBlendFunction
    {
        public Vector<float> Blend(Vector<float> backdrop, Vector<float> source, Vector<float> fill)
        {
            var half = new Vector<float>(0.5f);
            return default(TFunction).Blend(backdrop, half + (fill * (source - half)));
        }
    }

    /// <summary>Hard mix has no neutral colour; its step becomes a slope, (cb − f·(1 − cs)) ÷ (1 − f).</summary>
    public readonly struct HardMix : IFillFunction
    {
        public Vector<float> Blend(Vector<float> backdrop, Vector<float> source, Vector<float> fill)
        {
            var slope = (backdrop - (fill * (Vector<float>.One - source))) / (Vector<float>.One - fill);
            return Vector.Max(Vector<float>.Zero, Vector.Min(Vector<float>.One, slope));
        }
    }
}
