using LayerTools.Model;
using LayerTools.Model.Adjustments;

namespace LayerTools.Pixels.Compositing.Adjustments;

/// <summary>A colour filter by a plain formula, since no specification gives it and no file at hand shows it alone: as much of each channel as the density says is multiplied by the filter's, then luminosity is put back where it is to be kept.</summary>
internal sealed class ColorFilterTone(ColorFilter adjustment)
{
    public RgbTriple Find(RgbTriple color)
    {
        var filter = adjustment.Color;
        var filtered = new RgbTriple(Pass(color.Red, filter.Red), Pass(color.Green, filter.Green), Pass(color.Blue, filter.Blue));
        return adjustment.KeepsLuminosity ? Luminosity.Set(filtered, Luminosity.Of(color)) : filtered;
    }

    private double Pass(double value, double filter) => value * (1 - (adjustment.Density * (1 - filter)));
}
