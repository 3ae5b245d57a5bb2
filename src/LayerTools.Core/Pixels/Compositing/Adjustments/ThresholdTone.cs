using LayerTools.Model.Adjustments;

namespace LayerTools.Pixels.Compositing.Adjustments;

/// <summary>
/// White where the luminosity reaches the threshold, else black; in 8 bit it is rounded to a level first. Measured at four levels of 8 bit: each is the first that
/// becomes white. In 16 bit it is not rounded (as psd-tools measured).
/// </summary>
internal static class ThresholdTone
{
    /// <summary>Less than a step of 16 bit, for what sums of floats lose.</summary>
    private const double Trace = 1e-4;

    public static double Find(Threshold threshold, double luminosity, AdjusterContext context) => (context.Round(luminosity) * byte.MaxValue) + Trace >= threshold.Level ? 1 : 0;
}
