using LayerTools.Model;
using LayerTools.Model.Adjustments;
using LayerTools.Pixels.Colors;

namespace LayerTools.Pixels.Compositing.Adjustments;

/// <summary>
/// Hue and saturation. No specification gives it, and no file at hand shows it alone: lightness first, towards white or black; then hue and saturation in HSL, where a
/// saturation s above 0 divides by 1 − s and one below multiplies by 1 + s (as psd-tools measured). Ranges of hues add to the shift with the part that their
/// trapezium gives the pixel's hue; their lightness moves a pixel's lower channels to its highest or its higher ones to its lowest.
/// </summary>
internal sealed class HueTone(HueSaturation adjustment)
{
    private const double Percent = 100;

    public RgbTriple Find(RgbTriple color)
    {
        if (adjustment.Colorizes)
        {
            var shift = adjustment.Colorization;
            var lightness = Lighten(HslColor.Of(color).Lightness, shift.Lightness / Percent);
            return new HslColor(HslColor.Wrap(shift.Hue), Limit(shift.Saturation / Percent), Limit(lightness)).ToRgb();
        }

        var master = adjustment.Master;
        var lit = Each(color, value => Lighten(value, master.Lightness / Percent));
        var hsl = HslColor.Of(lit);
        var (hue, saturation, lightnessOfRanges) = (hsl.Hue + master.Hue, 0.0, 0.0);
        foreach (var range in adjustment.Ranges)
        {
            var part = hsl.Saturation > 0 ? FindPart(range, hsl.Hue) : 0;
            hue += part * range.Shift.Hue;
            saturation += part * range.Shift.Saturation / Percent;
            lightnessOfRanges += part * range.Shift.Lightness / Percent;
        }

        if (lightnessOfRanges != 0) hsl = HslColor.Of(LightenChroma(lit, Math.Max(-1, Math.Min(1, lightnessOfRanges))));
        return new HslColor(HslColor.Wrap(hue), Saturate(Saturate(hsl.Saturation, master.Saturation / Percent), saturation), hsl.Lightness).ToRgb();
    }

    /// <summary>How much of a range's shift a hue gets, 0 to 1.</summary>
    private static double FindPart(HueRange range, double hue)
    {
        var place = HslColor.Wrap(hue - range.Start);
        var fullStart = HslColor.Wrap(range.FullStart - range.Start);
        var fullEnd = HslColor.Wrap(range.FullEnd - range.Start);
        var end = HslColor.Wrap(range.End - range.Start);
        if (place >= end) return 0;
        if (place < fullStart) return place / fullStart;
        return place <= fullEnd ? 1 : (end - place) / (end - fullEnd);
    }

    private static RgbTriple LightenChroma(RgbTriple color, double lightness)
    {
        var target = lightness > 0 ? Math.Max(color.Red, Math.Max(color.Green, color.Blue)) : Math.Min(color.Red, Math.Min(color.Green, color.Blue));
        return Each(color, value => value + ((target - value) * Math.Abs(lightness)));
    }

    private static double Lighten(double value, double lightness) => lightness > 0 ? value + ((1 - value) * lightness) : value * (1 + lightness);

    private static double Saturate(double value, double saturation)
    {
        if (saturation <= 0) return Limit(value * (1 + saturation));
        return value <= 0 ? 0 : saturation >= 1 ? 1 : Limit(value / (1 - saturation));
    }

    private static double Limit(double value) => Math.Max(0, Math.Min(1, value));

    private static RgbTriple Each(RgbTriple color, Func<double, double> change) => new(change(color.Red), change(color.Green), change(color.Blue));
}
