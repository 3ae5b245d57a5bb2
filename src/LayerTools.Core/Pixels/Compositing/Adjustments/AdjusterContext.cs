using LayerTools.Model;
using LayerTools.Pixels.Colors;

namespace LayerTools.Pixels.Compositing.Adjustments;

/// <summary>What an adjustment has to know of the file.</summary>
/// <param name="ColorMode">Grey or RGB.</param>
/// <param name="BitDepth">8, 16 or 32.</param>
/// <param name="Curve">How encoded values stand for light.</param>
internal sealed record AdjusterContext(ColorMode ColorMode, int BitDepth, LightCurve Curve)
{
    public int ColorCount => ColorMode == ColorMode.Rgb ? 3 : 1;

    /// <summary>Values are rounded where a program that works in whole numbers rounds: in 8 bit the steps are seen.</summary>
    public double Round(double value) => BitDepth == 8 ? Math.Floor((value * byte.MaxValue) + 0.5) / byte.MaxValue : value;
}
