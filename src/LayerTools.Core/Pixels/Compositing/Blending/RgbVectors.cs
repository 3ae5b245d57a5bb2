using System.Numerics;

namespace LayerTools.Pixels.Compositing.Blending;

/// <summary>The colours of as many pixels as a vector holds, not premultiplied, and the functions of W3C Compositing and Blending Level 1, section 9.2, on them.</summary>
internal readonly record struct RgbVectors(Vector<float> Red, Vector<float> Green, Vector<float> Blue)
{
    /// <summary>Lum(C).</summary>
    public Vector<float> Luminosity => (Red * 0.3f) + (Green * 0.59f) + (Blue * 0.11f);

    /// <summary>Sat(C).</summary>
    public Vector<float> Saturation => Largest - Smallest;

    private Vector<float> Largest => Vector.Max(Red, Vector.Max(Green, Blue));

    private Vector<float> Smallest => Vector.Min(Red, Vector.Min(Green, Blue));

    public static RgbVectors Select(Vector<int> condition, RgbVectors yes, RgbVectors no) => new(
        Vector.ConditionalSelect(condition, yes.Red, no.Red),
        Vector.ConditionalSelect(condition, yes.Green, no.Green),
        Vector.ConditionalSelect(condition, yes.Blue, no.Blue));

    /// <summary>SetLum(C, l).</summary>
    public RgbVectors WithLuminosity(Vector<float> luminosity)
    {
        var lift = luminosity - Luminosity;
        return new RgbVectors(Red + lift, Green + lift, Blue + lift).Clip();
    }

    /// <summary>SetSat(C, s): the least channel becomes 0, the largest s, the middle one keeps its place between them; greys become black.</summary>
    public RgbVectors WithSaturation(Vector<float> saturation)
    {
        var least = Smallest;
        var range = Largest - least;
        var factor = Vector.ConditionalSelect(Vector.GreaterThan(range, Vector<float>.Zero), saturation / range, Vector<float>.Zero);
        return new RgbVectors((Red - least) * factor, (Green - least) * factor, (Blue - least) * factor);
    }

    /// <summary>ClipColor(C): what left 0 to 1 is drawn towards its luminosity.</summary>
    private RgbVectors Clip()
    {
        var luminosity = Luminosity;
        var least = Smallest;
        var largest = Largest;
        var up = Vector.ConditionalSelect(Vector.LessThan(least, Vector<float>.Zero), luminosity / (luminosity - least), Vector<float>.One);
        var down = Vector.ConditionalSelect(Vector.GreaterThan(largest, Vector<float>.One), (Vector<float>.One - luminosity) / (largest - luminosity), Vector<float>.One);
        var factor = up * down;
        return new RgbVectors(luminosity + ((Red - luminosity) * factor), luminosity + ((Green - luminosity) * factor), luminosity + ((Blue - luminosity) * factor));
    }
}
