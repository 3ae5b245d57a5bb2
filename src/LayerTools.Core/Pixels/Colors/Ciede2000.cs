namespace LayerTools.Pixels.Colors;

/// <summary>
/// The colour difference CIEDE2000 (ISO/CIE 11664-6) with all weights 1. Written after Sharma, Wu and Dalal, "The CIEDE2000 Color-Difference Formula: Implementation
/// Notes, Supplementary Test Data, and Mathematical Observations", Color Research and Application 30 (2005), whose numbers of equations stand in brackets.
/// </summary>
internal static class Ciede2000
{
    private const double Degree = Math.PI / 180;
    private const double Turn = 2 * Math.PI;

    /// <summary>25 to the power of 7.</summary>
    private const double ChromaPivot = 6103515625;

    /// <summary>ΔE00 of two colours: about 1 is just seen, black and white differ by 100. It is the same in both directions.</summary>
    public static double Measure(CieLab one, CieLab two)
    {
        // (2) to (7): a* is stretched near grey.
        var grey = 1.5 - (0.5 * FindSaturation((Length(one.A, one.B) + Length(two.A, two.B)) / 2));
        var (a1, a2) = (grey * one.A, grey * two.A);
        var (chroma1, chroma2) = (Length(a1, one.B), Length(a2, two.B));
        var (hue1, hue2) = (FindHue(a1, one.B), FindHue(a2, two.B));

        // (8) to (11)
        var isGrey = chroma1 * chroma2 == 0;
        var lightness = two.Lightness - one.Lightness;
        var chroma = chroma2 - chroma1;
        var turn = hue2 - hue1;
        if (isGrey) turn = 0;
        else if (turn > Math.PI) turn -= Turn;
        else if (turn < -Math.PI) turn += Turn;
        var hue = 2 * Math.Sqrt(chroma1 * chroma2) * Math.Sin(turn / 2);

        // (12) to (14)
        var meanChroma = (chroma1 + chroma2) / 2;
        var meanHue = hue1 + hue2;
        if (!isGrey)
        {
            if (Math.Abs(hue1 - hue2) > Math.PI) meanHue += meanHue < Turn ? Turn : -Turn;
            meanHue /= 2;
        }

        // (15) to (21)
        var t = 1 - (0.17 * Math.Cos(meanHue - (30 * Degree))) + (0.24 * Math.Cos(2 * meanHue))
            + (0.32 * Math.Cos((3 * meanHue) + (6 * Degree))) - (0.20 * Math.Cos((4 * meanHue) - (63 * Degree)));
        var bump = ((meanHue / Degree) - 275) / 25;
        var rotation = 60 * Degree * Math.Exp(-bump * bump);
        var offset = ((one.Lightness + two.Lightness) / 2) - 50;
        var weighedLightness = lightness / (1 + (0.015 * offset * offset / Math.Sqrt(20 + (offset * offset))));
        var weighedChroma = chroma / (1 + (0.045 * meanChroma));
        var weighedHue = hue / (1 + (0.015 * meanChroma * t));

        // (22)
        var sum = (weighedLightness * weighedLightness) + (weighedChroma * weighedChroma) + (weighedHue * weighedHue)
            - (Math.Sin(rotation) * 2 * FindSaturation(meanChroma) * weighedChroma * weighedHue);
        return Math.Sqrt(Math.Max(0, sum));
    }

    /// <summary>0 for grey, nearly 1 for strong colours.</summary>
    private static double FindSaturation(double chroma)
    {
        var cube = chroma * chroma * chroma;
        var seventh = cube * cube * chroma;
        return Math.Sqrt(seventh / (seventh + ChromaPivot));
    }

    /// <summary>0 to a whole turn; 0 for grey.</summary>
    private static double FindHue(double a, double b)
    {
        var hue = Math.Atan2(b, a);
        return hue < 0 ? hue + Turn : hue;
    }

    private static double Length(double a, double b) => Math.Sqrt((a * a) + (b * b));
}
