using LayerTools.Model;
using LayerTools.Model.Adjustments;

namespace LayerTools.Pixels.Compositing.Adjustments;

/// <summary>Which adjustments can be drawn, and what draws them.</summary>
internal static class ColorAdjusters
{
    /// <summary>Whether the adjustment can be drawn in files of that colour mode.</summary>
    public static bool CanDraw(Adjustment adjustment, ColorMode mode) => mode switch
    {
        ColorMode.Rgb => true,
        ColorMode.Grayscale or ColorMode.Duotone => adjustment is Inversion or BrightnessContrast or Levels or ToneCurves or Exposure or Threshold or Posterization,
        _ => false,
    };

    /// <summary>Whether a specification or measurement says what it does; otherwise the formula is our own and the program that wrote the file may draw it somewhat differently.</summary>
    public static bool IsKnown(Adjustment adjustment) => adjustment is not (HueSaturation or ColorBalance or GreyMix or ColorFilter or GradientMap);

    /// <summary>What draws an adjustment; <see cref="CanDraw"/> must hold.</summary>
    public static ColorAdjuster Create(Adjustment adjustment, AdjusterContext context) => adjustment switch
    {
        Inversion => new ToneAdjuster(context, value => 1 - value),
        BrightnessContrast change => new ToneAdjuster(context, new BrightnessTone(change).Find),
        Levels levels => new ToneAdjuster(context, channel => Join(context, value => Stretch(levels, channel + 1, value, context), value => Stretch(levels, 0, value, context))),
        ToneCurves curves => new ToneAdjuster(context, channel => Join(context, Bend(curves, channel + 1), Bend(curves, 0))),
        Exposure exposure => ExposureAdjuster.Create(exposure, context),
        Posterization posterization => new ToneAdjuster(context, value => PosterizationTone.Find(posterization, value)),
        Threshold threshold when context.ColorCount == 1 => new ToneAdjuster(context, value => ThresholdTone.Find(threshold, value, context)),
        Threshold threshold => OfRgb(context, color => Grey(ThresholdTone.Find(threshold, Luminosity.Of(color), context))),
        HueSaturation shift => OfRgb(context, new HueTone(shift).Find),
        ColorBalance balance => OfRgb(context, new BalanceTone(balance).Find),
        GreyMix mix => OfRgb(context, new GreyMixTone(mix).Find),
        GradientMap map when new GradientMapTone(map) is var tone => OfRgb(context, color => tone.Find(Luminosity.Of(color))),
        ChannelMix mix => OfRgb(context, new ChannelMixTone(mix).Find),
        ColorFilter filter => OfRgb(context, new ColorFilterTone(filter).Find),
        _ => throw new ArgumentOutOfRangeException(nameof(adjustment)),
    };

    private static RgbAdjuster OfRgb(AdjusterContext context, Func<RgbTriple, RgbTriple> function) => new(context.BitDepth, function);

    private static RgbTriple Grey(double value) => new(value, value, value);

    /// <summary>A colour's own change comes before that of all colours together (as psd-tools draws it; no file at hand has both).</summary>
    private static Func<double, double> Join(AdjusterContext context, Func<double, double> own, Func<double, double> common) =>
        value => common(context.Round(Math.Max(0, Math.Min(1, own(value)))));

    private static double Stretch(Levels levels, int channel, double value, AdjusterContext context) =>
        channel < levels.Channels.Count && levels.Channels[channel] is var range && range != LevelsRange.Unchanged ? LevelsTone.Find(range, value, context) : value;

    private static Func<double, double> Bend(ToneCurves curves, int channel)
    {
        var tones = curves.Curves.Where(curve => curve.Channel == channel).Select(curve => new CurveTone(curve)).ToList();
        return tones.Count == 0 ? value => value : tones[0].Find;
    }
}
