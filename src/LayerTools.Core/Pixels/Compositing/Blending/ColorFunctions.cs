using System.Numerics;

namespace LayerTools.Pixels.Compositing.Blending;

/// <summary>The modes that mix whole colours: four of W3C Compositing and Blending Level 1, section 9.2, and two of layered files that choose one of both colours by that standard's luminosity.</summary>
internal static class ColorFunctions
{
    public readonly struct Hue : IColorFunction
    {
        public RgbVectors Blend(RgbVectors backdrop, RgbVectors source) => source.WithSaturation(backdrop.Saturation).WithLuminosity(backdrop.Luminosity);
    }

    public readonly struct Saturation : IColorFunction
    {
        public RgbVectors Blend(RgbVectors backdrop, RgbVectors source) => backdrop.WithSaturation(source.Saturation).WithLuminosity(backdrop.Luminosity);
    }

    public readonly struct Color : IColorFunction
    {
        public RgbVectors Blend(RgbVectors backdrop, RgbVectors source) => source.WithLuminosity(backdrop.Luminosity);
    }

    public readonly struct Luminosity : IColorFunction
    {
        public RgbVectors Blend(RgbVectors backdrop, RgbVectors source) => backdrop.WithLuminosity(source.Luminosity);
    }

    public readonly struct Darker : IColorFunction
    {
        public RgbVectors Blend(RgbVectors backdrop, RgbVectors source) => RgbVectors.Select(Vector.LessThan(source.Luminosity, backdrop.Luminosity), source, backdrop);
    }

    public readonly struct Lighter : IColorFunction
    {
        public RgbVectors Blend(RgbVectors backdrop, RgbVectors source) => RgbVectors.Select(Vector.GreaterThan(source.Luminosity, backdrop.Luminosity), source, backdrop);
    }
}
