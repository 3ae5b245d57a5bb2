using LayerTools.Model;
using LayerTools.Pixels.Colors;

namespace LayerTools.Pixels.Compositing.Adjustments;

/// <summary>An adjustment whose result depends on all three colours of a pixel. 32-bit light is encoded as sRGB before and decoded after.</summary>
internal sealed class RgbAdjuster(int bitDepth, Func<RgbTriple, RgbTriple> function) : ColorAdjuster
{
    private readonly bool isLight = bitDepth == 32;

    public override void Adjust(PixelRow pixels, int count)
    {
        var (reds, greens, blues) = (pixels.Colors[0], pixels.Colors[1], pixels.Colors[2]);
        var (lastRed, lastGreen, lastBlue) = (float.NaN, float.NaN, float.NaN);
        for (var i = 0; i < count; i++)
        {
            // Neighbours often have the same colour.
            if (reds[i] == lastRed && greens[i] == lastGreen && blues[i] == lastBlue)
            {
                (reds[i], greens[i], blues[i]) = (reds[i - 1], greens[i - 1], blues[i - 1]);
                continue;
            }

            (lastRed, lastGreen, lastBlue) = (reds[i], greens[i], blues[i]);
            var color = function(new RgbTriple(Before(lastRed), Before(lastGreen), Before(lastBlue)));
            (reds[i], greens[i], blues[i]) = (After(color.Red), After(color.Green), After(color.Blue));
        }
    }

    private double Before(float value) => isLight ? SrgbCurve.Encode(value) : Math.Max(0, Math.Min(1, value));

    private float After(double value)
    {
        var limited = Math.Max(0, Math.Min(1, value));
        return (float)(isLight ? SrgbCurve.Decode(limited) : limited);
    }
}
