using System.Numerics;

namespace LayerTools.Pixels.Compositing.Blending;

/// <summary>The separable blend modes of W3C Compositing and Blending Level 1, formulas as in its section 9.1.</summary>
internal static class BlendFunctions
{
    private static Vector<float> MultiplyOrScreen(Vector<float> color, Vector<float> chooser)
    {
        var doubled = chooser + chooser;
        return Vector.ConditionalSelect(Vector.LessThanOrEqual(chooser, new Vector<float>(0.5f)), color * doubled, ScreenOf(color, doubled - Vector<float>.One));
    }

    private static Vector<float> ScreenOf(Vector<float> one, Vector<float> other) => one + other - (one * other);

    public readonly struct Multiply : IBlendFunction
    {
        public Vector<float> Blend(Vector<float> backdrop, Vector<float> source) => backdrop * source;
    }

    public readonly struct Screen : IBlendFunction
    {
        public Vector<float> Blend(Vector<float> backdrop, Vector<float> source) => ScreenOf(backdrop, source);
    }

    public readonly struct Overlay : IBlendFunction
    {
        public Vector<float> Blend(Vector<float> backdrop, Vector<float> source) => MultiplyOrScreen(source, backdrop);
    }

    public readonly struct HardLight : IBlendFunction
    {
        public Vector<float> Blend(Vector<float> backdrop, Vector<float> source) => MultiplyOrScreen(backdrop, source);
    }

    public readonly struct Darken : IBlendFunction
    {
        public Vector<float> Blend(Vector<float> backdrop, Vector<float> source) => Vector.Min(backdrop, source);
    }

    public readonly struct Lighten : IBlendFunction
    {
        public Vector<float> Blend(Vector<float> backdrop, Vector<float> source) => Vector.Max(backdrop, source);
    }

    public readonly struct ColorDodge : IBlendFunction
    {
        public Vector<float> Blend(Vector<float> backdrop, Vector<float> source)
        {
            var dodged = Vector.Min(Vector<float>.One, backdrop / (Vector<float>.One - source));
            dodged = Vector.ConditionalSelect(Vector.GreaterThanOrEqual(source, Vector<float>.One), Vector<float>.One, dodged);
            return Vector.ConditionalSelect(Vector.LessThanOrEqual(backdrop, Vector<float>.Zero), Vector<float>.Zero, dodged);
        }
    }

    public readonly struct ColorBurn : IBlendFunction
    {
        public Vector<float> Blend(Vector<float> backdrop, Vector<float> source)
        {
            var burned = Vector<float>.One - Vector.Min(Vector<float>.One, (Vector<float>.One - backdrop) / source);
            burned = Vector.ConditionalSelect(Vector.LessThanOrEqual(source, Vector<float>.Zero), Vector<float>.Zero, burned);
            return Vector.ConditionalSelect(Vector.GreaterThanOrEqual(backdrop, Vector<float>.One), Vector<float>.One, burned);
        }
    }

    public readonly struct SoftLight : IBlendFunction
    {
        public Vector<float> Blend(Vector<float> backdrop, Vector<float> source)
        {
            var doubled = source + source;
            var darker = backdrop - ((Vector<float>.One - doubled) * backdrop * (Vector<float>.One - backdrop));
            var curve = ((((16f * backdrop) - new Vector<float>(12f)) * backdrop) + new Vector<float>(4f)) * backdrop;
            var lift = Vector.ConditionalSelect(Vector.LessThanOrEqual(backdrop, new Vector<float>(0.25f)), curve, Vector.SquareRoot(Vector.Max(backdrop, Vector<float>.Zero)));
            var lighter = backdrop + ((doubled - Vector<float>.One) * (lift - backdrop));
            return Vector.ConditionalSelect(Vector.LessThanOrEqual(source, new Vector<float>(0.5f)), darker, lighter);
        }
    }

    public readonly struct Difference : IBlendFunction
    {
        public Vector<float> Blend(Vector<float> backdrop, Vector<float> source) => Vector.Abs(backdrop - source);
    }

    public readonly struct Exclusion : IBlendFunction
    {
        public Vector<float> Blend(Vector<float> backdrop, Vector<float> source) => backdrop + source - (2f * backdrop * source);
    }
}
