namespace LayerTools.Pixels.Colors;

/// <summary>
/// A colour in CIE 1976 L*a*b* (CIE 15) relative to the white D65 of the 2° observer.
/// </summary>
/// <param name="Lightness">L*, 0 to 100.</param>
/// <param name="A">a*, green to red.</param>
/// <param name="B">b*, blue to yellow.</param>
internal readonly record struct CieLab(double Lightness, double A, double B)
{
    private const double Knee = 6.0 / 29;

    private static readonly double[] Light = CreateLight();

    /// <summary>
    /// An sRGB colour: decoded and turned to XYZ as IEC 61966-2-1 states it, with four digits in the matrix. The white is the sum of its rows, so that
    /// greys have neither a* nor b*.
    /// </summary>
    public static CieLab FromSrgb(byte red, byte green, byte blue)
    {
        var (r, g, b) = (Light[red], Light[green], Light[blue]);
        var x = Root(((0.4124 * r) + (0.3576 * g) + (0.1805 * b)) / 0.9505);
        var y = Root((0.2126 * r) + (0.7152 * g) + (0.0722 * b));
        var z = Root(((0.0193 * r) + (0.1192 * g) + (0.9505 * b)) / 1.0890);
        return new CieLab((116 * y) - 16, 500 * (x - y), 200 * (y - z));
    }

    private static double Root(double value) => value > Knee * Knee * Knee ? Math.Pow(value, 1.0 / 3) : (value / (3 * Knee * Knee)) + (4.0 / 29);

    private static double[] CreateLight()
    {
        var light = new double[256];
        for (var code = 0; code < light.Length; code++) light[code] = SrgbCurve.Decode(code / 255.0);
        return light;
    }
}
