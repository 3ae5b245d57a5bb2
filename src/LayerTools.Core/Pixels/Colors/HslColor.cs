using LayerTools.Model;

namespace LayerTools.Pixels.Colors;

/// <summary>A colour by hue, saturation and lightness (the HSL of CSS Color).</summary>
/// <param name="Hue">Degrees, 0 to 360.</param>
/// <param name="Saturation">0 to 1.</param>
/// <param name="Lightness">0 to 1.</param>
internal readonly record struct HslColor(double Hue, double Saturation, double Lightness)
{
    public static HslColor Of(RgbTriple color)
    {
        var (red, green, blue) = (color.Red, color.Green, color.Blue);
        var most = Math.Max(red, Math.Max(green, blue));
        var least = Math.Min(red, Math.Min(green, blue));
        var (chroma, lightness) = (most - least, (most + least) / 2);
        if (chroma <= 0) return new HslColor(0, 0, lightness);
        var sixth = most == red ? (green - blue) / chroma : most == green ? ((blue - red) / chroma) + 2 : ((red - green) / chroma) + 4;
        return new HslColor(Wrap(60 * sixth), chroma / (1 - Math.Abs((2 * lightness) - 1)), lightness);
    }

    public RgbTriple ToRgb()
    {
        var (hue, lightness) = (Hue, Lightness);
        var reach = Math.Max(0, Math.Min(1, Saturation)) * Math.Min(lightness, 1 - lightness);
        return new RgbTriple(Channel(0), Channel(8), Channel(4));

        double Channel(int shift)
        {
            var place = (shift + (hue / 30)) % 12;
            return lightness - (reach * Math.Max(-1, Math.Min(Math.Min(place - 3, 9 - place), 1)));
        }
    }

    /// <summary>Degrees brought to 0 up to 360.</summary>
    public static double Wrap(double degrees)
    {
        var wrapped = degrees % 360;
        return wrapped < 0 ? wrapped + 360 : wrapped;
    }
}
