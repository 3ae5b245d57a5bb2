using LayerTools.Model.Adjustments;

namespace LayerTools.Pixels.Compositing.Adjustments;

/// <summary>White where the luminosity, rounded to a level, reaches the threshold, else black. Measured at four levels: each is the first that becomes white.</summary>
internal static class ThresholdTone
{
    public static double Find(Threshold threshold, double luminosity) => Math.Floor((luminosity * byte.MaxValue) + 0.5) >= threshold.Level ? 1 : 0;
}
