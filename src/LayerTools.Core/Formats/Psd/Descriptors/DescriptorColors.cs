using LayerTools.Model.Fills;

namespace LayerTools.Formats.Psd.Descriptors;

/// <summary>Colours in descriptors, which may be of another model than the file.</summary>
internal static class DescriptorColors
{
    /// <summary>The colour as the channels of an RGB or grey file store it; null where the descriptor is no colour that can be told.</summary>
    public static FillColor? Read(Descriptor? color)
    {
        if (color is null) return null;
        switch (color.ClassId)
        {
            case "RGBC" when (color.GetNumber("Rd  "), color.GetNumber("Grn "), color.GetNumber("Bl  ")) is ({ } red, { } green, { } blue):
                return Of(red / 255, green / 255, blue / 255);
            case "Grsc" when color.GetNumber("Gry ") is { } ink:
                // Per cent of ink.
                return Of(1 - (ink / 100), 1 - (ink / 100), 1 - (ink / 100));
            case "HSBC" when (color.GetNumber("H   "), color.GetNumber("Strt"), color.GetNumber("Brgh")) is ({ } hue, { } saturation, { } brightness):
                return FromHue(hue, saturation / 100, brightness / 100);
            case "CMYC" when (color.GetNumber("Cyn "), color.GetNumber("Mgnt"), color.GetNumber("Ylw "), color.GetNumber("Blck")) is ({ } cyan, { } magenta, { } yellow, { } black):
                // The plain formula, without a profile.
                return Of((1 - (cyan / 100)) * (1 - (black / 100)), (1 - (magenta / 100)) * (1 - (black / 100)), (1 - (yellow / 100)) * (1 - (black / 100)));
            case "LbCl" when (color.GetNumber("Lmnc"), color.GetNumber("A   "), color.GetNumber("B   ")) is ({ } lightness, { } a, { } b):
                return FromLab(lightness, a, b);
            default:
                return null;
        }
    }

    private static FillColor FromHue(double hue, double saturation, double brightness)
    {
        double At(double turn)
        {
            var k = (turn + (hue / 60)) % 6;
            return brightness * (1 - (saturation * Math.Max(0, Math.Min(1, Math.Min(k, 4 - k)))));
        }

        return Of(At(5), At(3), At(1));
    }

    /// <summary>CIE Lab with white D50 to sRGB: CIE 15 for XYZ, the matrix of sRGB adapted to D50 by Bradford.</summary>
    private static FillColor FromLab(double lightness, double a, double b)
    {
        static double Undo(double f) => f > 6.0 / 29 ? f * f * f : 108.0 / 841 * (f - (4.0 / 29));
        static double Encode(double light) => light <= 0.0031308 ? 12.92 * light : (1.055 * Math.Pow(light, 1 / 2.4)) - 0.055;

        var fy = (lightness + 16) / 116;
        var x = 0.9642 * Undo(fy + (a / 500));
        var y = Undo(fy);
        var z = 0.8249 * Undo(fy - (b / 200));
        return Of(
            Encode((3.1338561 * x) - (1.6168667 * y) - (0.4906146 * z)),
            Encode((-0.9787684 * x) + (1.9161415 * y) + (0.0334540 * z)),
            Encode((0.0719453 * x) - (0.2289914 * y) + (1.4052427 * z)));
    }

    private static FillColor Of(double red, double green, double blue) => new(Clamp(red), Clamp(green), Clamp(blue));

    private static float Clamp(double value) => (float)Math.Max(0, Math.Min(1, value));
}
