using LayerTools.Model;

namespace LayerTools.Pixels.Colors;

/// <summary>
/// CIE L*a*b* with the white of D50, as files and profiles use it, to sRGB: L*a*b* to XYZ after CIE 15, XYZ from D50 to D65 by the Bradford
/// matrix (ICC.1, annex E) and to linear sRGB in one matrix, then the sRGB encoding (IEC 61966-2-1). Colours that sRGB does not have are cut off per channel.
/// </summary>
internal static class LabColor
{
    // The white of D50 as ICC.1 states it.
    private const double WhiteX = 0.9642;
    private const double WhiteZ = 0.8249;

    /// <summary>A colour as sRGB, 0 to 1 each.</summary>
    /// <param name="lightness">L*, 0 to 100.</param>
    /// <param name="a">a*, about −128 to 127.</param>
    /// <param name="b">b*, about −128 to 127.</param>
    public static RgbTriple ToRgb(double lightness, double a, double b) => Encode(ToLight(lightness, a, b));

    /// <summary>A colour as linear light of sRGB; colours that sRGB does not have lie outside 0 to 1.</summary>
    public static RgbTriple ToLight(double lightness, double a, double b)
    {
        var y = (lightness + 16) / 116;
        return XyzToLight(WhiteX * Cube(y + (a / 500)), Cube(y), WhiteZ * Cube(y - (b / 200)));
    }

    /// <summary>A colour as sRGB, 0 to 1 each, from XYZ relative to D50 with 1 for the Y of white.</summary>
    public static RgbTriple XyzToRgb(double x, double y, double z) => Encode(XyzToLight(x, y, z));

    private static RgbTriple XyzToLight(double x, double y, double z) => new(
        (3.1338561 * x) - (1.6168667 * y) - (0.4906146 * z),
        (-0.9787684 * x) + (1.9161415 * y) + (0.0334540 * z),
        (0.0719453 * x) - (0.2289914 * y) + (1.4052427 * z));

    private static RgbTriple Encode(RgbTriple light) => new(SrgbCurve.Encode(light.Red), SrgbCurve.Encode(light.Green), SrgbCurve.Encode(light.Blue));

    private static double Cube(double root)
    {
        const double Knee = 6.0 / 29;
        return root > Knee ? root * root * root : 3 * Knee * Knee * (root - (4.0 / 29));
    }
}
