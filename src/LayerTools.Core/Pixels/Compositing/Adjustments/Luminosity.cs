using LayerTools.Model;

namespace LayerTools.Pixels.Compositing.Adjustments;

/// <summary>Luminosity as W3C Compositing and Blending Level 1, section 10, defines it.</summary>
internal static class Luminosity
{
    public const double RedPart = 0.3;
    public const double GreenPart = 0.59;
    public const double BluePart = 0.11;

    public static double Of(RgbTriple color) => (RedPart * color.Red) + (GreenPart * color.Green) + (BluePart * color.Blue);

    /// <summary>The colour with another luminosity, moved towards grey where it would leave 0 to 1.</summary>
    public static RgbTriple Set(RgbTriple color, double luminosity)
    {
        var shift = luminosity - Of(color);
        var (red, green, blue) = (color.Red + shift, color.Green + shift, color.Blue + shift);
        var least = Math.Min(red, Math.Min(green, blue));
        var most = Math.Max(red, Math.Max(green, blue));
        var part = 1.0;
        if (least < 0) part = luminosity / (luminosity - least);
        if (most > 1) part = Math.Min(part, (1 - luminosity) / (most - luminosity));
        return new RgbTriple(luminosity + ((red - luminosity) * part), luminosity + ((green - luminosity) * part), luminosity + ((blue - luminosity) * part));
    }
}
