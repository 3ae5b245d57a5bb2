using LayerTools.Model;
using LayerTools.Model.Adjustments;

namespace LayerTools.Pixels.Compositing.Adjustments;

/// <summary>
/// The mix to grey by a plain formula, since no specification gives it and no file at hand shows it alone: a colour is grey (its lowest channel), some of the mixed colour between its two
/// highest channels (yellow, cyan or magenta) and some of the pure colour of the highest; the parts of the latter two are weighed. A tint keeps its hue and gets the grey's luminosity.
/// </summary>
internal sealed class GreyMixTone(GreyMix adjustment)
{
    private const double Percent = 100;

    private enum Weight
    {
        Red,
        Yellow,
        Green,
        Cyan,
        Blue,
        Magenta,
    }

    public RgbTriple Find(RgbTriple color)
    {
        var (red, green, blue) = (color.Red, color.Green, color.Blue);
        var most = Math.Max(red, Math.Max(green, blue));
        var least = Math.Min(red, Math.Min(green, blue));
        var middle = red + green + blue - most - least;
        var pure = most == red ? Weight.Red : most == green ? Weight.Green : Weight.Blue;
        var mixed = least == blue ? Weight.Yellow : least == red ? Weight.Cyan : Weight.Magenta;
        var grey = Math.Max(0, Math.Min(1, least + ((middle - least) * Of(mixed)) + ((most - middle) * Of(pure))));
        return adjustment.Tint is { } tint ? Luminosity.Set(tint, grey) : new RgbTriple(grey, grey, grey);
    }

    private double Of(Weight weight) => adjustment.Weights[(int)weight] / Percent;
}
