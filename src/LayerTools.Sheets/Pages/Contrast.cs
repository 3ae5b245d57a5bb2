namespace LayerTools.Sheets.Pages;

/// <summary>Contrast of two colours as WCAG 2.2 defines it ('relative luminance' and 'contrast ratio').</summary>
internal static class Contrast
{
    /// <summary>What text of ordinary size needs: success criterion 1.4.3.</summary>
    public const double Minimum = 4.5;

    /// <summary>1 (none) to 21 (black on white).</summary>
    public static double Ratio(Rgb one, Rgb other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    /// <summary>0 (black) to 1 (white).</summary>
    public static double Luminance(Rgb color) => 0.2126 * Linear(color.R) + 0.7152 * Linear(color.G) + 0.0722 * Linear(color.B);

    /// <summary>Black or white, whichever stands out more; one of the two reaches 4.58 on any single colour.</summary>
    public static Rgb ChooseInk(Rgb background) => Ratio(Rgb.Black, background) >= Ratio(Rgb.White, background) ? Rgb.Black : Rgb.White;

    private static double Linear(byte value)
    {
        var encoded = value / 255.0;
        return encoded <= 0.04045 ? encoded / 12.92 : Math.Pow((encoded + 0.055) / 1.055, 2.4);
    }
}
