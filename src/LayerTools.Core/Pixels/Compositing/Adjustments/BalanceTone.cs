using LayerTools.Model;
using LayerTools.Model.Adjustments;

namespace LayerTools.Pixels.Compositing.Adjustments;

/// <summary>
/// Colour balance by a plain formula of our own, since no specification gives it and no file at hand shows it alone: a channel c moves by a quarter of
/// dark·(1 − c)² + middle·2c(1 − c) + light·c², whose three parts add up to 1 everywhere; then luminosity is put back where it is to be kept.
/// </summary>
internal sealed class BalanceTone(ColorBalance adjustment)
{
    private const double Reach = 0.25 / 100;

    public RgbTriple Find(RgbTriple color)
    {
        var (darks, middles, lights) = (adjustment.Darks, adjustment.Middles, adjustment.Lights);
        var moved = new RgbTriple(
            Move(color.Red, darks.Red, middles.Red, lights.Red),
            Move(color.Green, darks.Green, middles.Green, lights.Green),
            Move(color.Blue, darks.Blue, middles.Blue, lights.Blue));
        return adjustment.KeepsLuminosity ? Luminosity.Set(moved, Luminosity.Of(color)) : moved;
    }

    private static double Move(double value, double dark, double middle, double light)
    {
        var rest = 1 - value;
        return Math.Max(0, Math.Min(1, value + (Reach * ((dark * rest * rest) + (2 * middle * value * rest) + (light * value * value)))));
    }
}
