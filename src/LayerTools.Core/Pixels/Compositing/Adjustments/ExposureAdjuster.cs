using LayerTools.Model.Adjustments;

namespace LayerTools.Pixels.Compositing.Adjustments;

/// <summary>
/// Exposure: light · 2^stops + offset, then ^(1/γ). 32-bit values are light; others are decoded and encoded, in grey files by the tone curve of the profile, in RGB by the power of 2.2. Measured on 996
/// levels in four settings of grey files with a profile: all but three agree exactly, those are off by 1. In two RGB files with the profile of sRGB
/// the plain power agrees and the curve of sRGB does not; grey files without a profile get the power too, which nothing confirms.
/// </summary>
internal static class ExposureAdjuster
{
    public static ColorAdjuster Create(Exposure exposure, AdjusterContext context) => context.BitDepth == 32
        ? new OfLight(exposure)
        : new ToneAdjuster(context, value => context.Curve.Encode(Math.Min(1, Expose(exposure, context.Curve.Decode(value)))));

    private static double Expose(Exposure exposure, double light) => Math.Pow(Math.Max(0, (light * Math.Pow(2, exposure.Stops)) + exposure.Offset), 1 / exposure.Gamma);

    /// <summary>Values above white stay.</summary>
    private sealed class OfLight(Exposure exposure) : ColorAdjuster
    {
        public override void Adjust(PixelRow pixels, int count)
        {
            foreach (var color in pixels.Colors)
            {
                for (var i = 0; i < count; i++) color[i] = (float)Math.Min(float.MaxValue, Expose(exposure, color[i]));
            }
        }
    }
}
