using System.Numerics;

namespace LayerTools.Pixels.Compositing.Blending;

/// <summary>
/// The separable blend modes that layered files have beyond the standard's. Their keys are in the published format specification; the formulas
/// are the usual definitions and agree with the pictures stored in real files.
/// </summary>
internal static class MoreBlendFunctions
{
    private static readonly Vector<float> Half = new(0.5f);

    private static Vector<float> Clamp(Vector<float> value) => Vector.Max(Vector<float>.Zero, Vector.Min(Vector<float>.One, value));

    private static Vector<float> ByHalf(Vector<float> source, Vector<float> darker, Vector<float> lighter) =>
        Vector.ConditionalSelect(Vector.LessThanOrEqual(source, Half), darker, lighter);

    /// <summary>cb + cs − 1.</summary>
    public readonly struct LinearBurn : IBlendFunction
    {
        public Vector<float> Blend(Vector<float> backdrop, Vector<float> source) => Clamp(backdrop + source - Vector<float>.One);
    }

    /// <summary>cb + cs.</summary>
    public readonly struct LinearDodge : IBlendFunction
    {
        public Vector<float> Blend(Vector<float> backdrop, Vector<float> source) => Clamp(backdrop + source);
    }

    /// <summary>
    /// Colour burn with 2cs up to one half, colour dodge with 2cs − 1 above. Where both divisor and dividend are 0 the source decides, not the backdrop as
    /// in the standard's burn and dodge: black makes black and white makes white (measured on real files).
    /// </summary>
    public readonly struct VividLight : IBlendFunction
    {
        public Vector<float> Blend(Vector<float> backdrop, Vector<float> source)
        {
            var doubled = source + source;
            var mixed = ByHalf(source, default(BlendFunctions.ColorBurn).Blend(backdrop, doubled), default(BlendFunctions.ColorDodge).Blend(backdrop, doubled - Vector<float>.One));
            mixed = Vector.ConditionalSelect(Vector.LessThanOrEqual(source, Vector<float>.Zero), Vector<float>.Zero, mixed);
            return Vector.ConditionalSelect(Vector.GreaterThanOrEqual(source, Vector<float>.One), Vector<float>.One, mixed);
        }
    }

    /// <summary>cb + 2cs − 1.</summary>
    public readonly struct LinearLight : IBlendFunction
    {
        public Vector<float> Blend(Vector<float> backdrop, Vector<float> source) => Clamp(backdrop + source + source - Vector<float>.One);
    }

    /// <summary>Darken with 2cs up to one half, lighten with 2cs − 1 above.</summary>
    public readonly struct PinLight : IBlendFunction
    {
        public Vector<float> Blend(Vector<float> backdrop, Vector<float> source)
        {
            var doubled = source + source;
            return ByHalf(source, Vector.Min(backdrop, doubled), Vector.Max(backdrop, doubled - Vector<float>.One));
        }
    }

    /// <summary>1 where cb + cs is more than 1, 0 where it is less, and cb itself where it is exactly 1 (measured on real files).</summary>
    public readonly struct HardMix : IBlendFunction
    {
        /// <summary>What floats may lose of a sum of samples that is exactly 1; less than a step of 16-bit samples.</summary>
        private const float Tolerance = 1e-5f;

        public Vector<float> Blend(Vector<float> backdrop, Vector<float> source)
        {
            var excess = backdrop + source - Vector<float>.One;
            var mixed = Vector.ConditionalSelect(Vector.GreaterThan(excess, Vector<float>.Zero), Vector<float>.One, Vector<float>.Zero);
            return Vector.ConditionalSelect(Vector.LessThan(Vector.Abs(excess), new Vector<float>(Tolerance)), backdrop, mixed);
        }
    }

    /// <summary>cb − cs.</summary>
    public readonly struct Subtract : IBlendFunction
    {
        public Vector<float> Blend(Vector<float> backdrop, Vector<float> source) => Clamp(backdrop - source);
    }

    /// <summary>cb ÷ cs; black divided by black is black, all else divided by black is white.</summary>
    public readonly struct Divide : IBlendFunction
    {
        public Vector<float> Blend(Vector<float> backdrop, Vector<float> source)
        {
            var divided = Clamp(backdrop / source);
            var byBlack = Vector.ConditionalSelect(Vector.GreaterThan(backdrop, Vector<float>.Zero), Vector<float>.One, Vector<float>.Zero);
            return Vector.ConditionalSelect(Vector.GreaterThan(source, Vector<float>.Zero), divided, byBlack);
        }
    }
}
