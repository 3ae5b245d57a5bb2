using LayerTools.Model;
using LayerTools.Model.Adjustments;

namespace LayerTools.Pixels.Compositing.Adjustments;

/// <summary>A colour by luminosity: straight mixing between neighbouring stops, bent so that the middle between them lies where they say. Noise to hide steps is not drawn.</summary>
internal sealed class GradientMapTone(GradientMap adjustment)
{
    private const double Half = 0.5;

    public RgbTriple Find(double luminosity)
    {
        var place = adjustment.IsReversed ? 1 - luminosity : luminosity;
        var stops = adjustment.Stops;
        if (place <= stops[0].Place) return stops[0].Color;
        if (place >= stops[stops.Count - 1].Place) return stops[stops.Count - 1].Color;
        var i = 0;
        while (place > stops[i + 1].Place) i++;
        var (from, to) = (stops[i], stops[i + 1]);
        var part = Bend((place - from.Place) / (to.Place - from.Place), from.Middle);
        return new RgbTriple(Mix(from.Color.Red, to.Color.Red, part), Mix(from.Color.Green, to.Color.Green, part), Mix(from.Color.Blue, to.Color.Blue, part));
    }

    private static double Mix(double from, double to, double part) => from + ((to - from) * part);

    private static double Bend(double part, double middle)
    {
        if (part <= middle) return middle <= 0 ? 0 : Half * part / middle;
        return middle >= 1 ? 1 : Half + (Half * (part - middle) / (1 - middle));
    }
}
