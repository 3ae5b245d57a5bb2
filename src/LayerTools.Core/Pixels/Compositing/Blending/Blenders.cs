using LayerTools.Model;

namespace LayerTools.Pixels.Compositing.Blending;

/// <summary>The modes that can be drawn: all that files store by name, except for pass-through, which groups know how to do.</summary>
internal static class Blenders
{
    private static readonly Dictionary<BlendMode, Blender> Table = new()
    {
        [BlendMode.Normal] = new NormalBlender(),
        [BlendMode.Multiply] = new SeparableBlender<BlendFunctions.Multiply>(),
        [BlendMode.Screen] = new SeparableBlender<BlendFunctions.Screen>(),
        [BlendMode.Overlay] = new SeparableBlender<BlendFunctions.Overlay>(),
        [BlendMode.Darken] = new SeparableBlender<BlendFunctions.Darken>(),
        [BlendMode.Lighten] = new SeparableBlender<BlendFunctions.Lighten>(),
        [BlendMode.ColorDodge] = new SeparableBlender<BlendFunctions.ColorDodge>(),
        [BlendMode.ColorBurn] = new SeparableBlender<BlendFunctions.ColorBurn>(),
        [BlendMode.HardLight] = new SeparableBlender<BlendFunctions.HardLight>(),
        [BlendMode.SoftLight] = new SeparableBlender<BlendFunctions.SoftLight>(),
        [BlendMode.Difference] = new SeparableBlender<BlendFunctions.Difference>(),
        [BlendMode.Exclusion] = new SeparableBlender<BlendFunctions.Exclusion>(),
        [BlendMode.Hue] = new ColorBlender<ColorFunctions.Hue>(),
        [BlendMode.Saturation] = new ColorBlender<ColorFunctions.Saturation>(),
        [BlendMode.Color] = new ColorBlender<ColorFunctions.Color>(),
        [BlendMode.Luminosity] = new ColorBlender<ColorFunctions.Luminosity>(),
        [BlendMode.Dissolve] = new DissolveBlender(),
        [BlendMode.LinearBurn] = new SeparableBlender<MoreBlendFunctions.LinearBurn>(),
        [BlendMode.LinearDodge] = new SeparableBlender<MoreBlendFunctions.LinearDodge>(),
        [BlendMode.DarkerColor] = new ColorBlender<ColorFunctions.Darker>(),
        [BlendMode.LighterColor] = new ColorBlender<ColorFunctions.Lighter>(),
        [BlendMode.VividLight] = new SeparableBlender<MoreBlendFunctions.VividLight>(),
        [BlendMode.LinearLight] = new SeparableBlender<MoreBlendFunctions.LinearLight>(),
        [BlendMode.PinLight] = new SeparableBlender<MoreBlendFunctions.PinLight>(),
        [BlendMode.HardMix] = new SeparableBlender<MoreBlendFunctions.HardMix>(),
        [BlendMode.Subtract] = new SeparableBlender<MoreBlendFunctions.Subtract>(),
        [BlendMode.Divide] = new SeparableBlender<MoreBlendFunctions.Divide>(),
    };

    public static IReadOnlyCollection<BlendMode> Supported => Table.Keys;

    public static Blender Normal => Table[BlendMode.Normal];

    public static Blender? TryGet(BlendMode mode) => Table.TryGetValue(mode, out var blender) ? blender : null;

    /// <summary>Whether fill opacity acts in this mode as plain opacity does; otherwise <see cref="TryGetFilled"/> has a blender.</summary>
    public static bool FillActsAsOpacity(BlendMode mode) => TryGetFilled(mode, 0f) is null;

    /// <summary>The blender for one of the modes in which fill opacity, 0 to 1, works before the formula; null for all others. For full opacity the mode's own blender is to be used.</summary>
    public static Blender? TryGetFilled(BlendMode mode, float fill) => mode switch
    {
        BlendMode.ColorBurn => new FillBlender<FillFunctions.FromWhite<BlendFunctions.ColorBurn>>(fill),
        BlendMode.LinearBurn => new FillBlender<FillFunctions.FromWhite<MoreBlendFunctions.LinearBurn>>(fill),
        BlendMode.ColorDodge => new FillBlender<FillFunctions.FromBlack<BlendFunctions.ColorDodge>>(fill),
        BlendMode.LinearDodge => new FillBlender<FillFunctions.FromBlack<MoreBlendFunctions.LinearDodge>>(fill),
        BlendMode.Difference => new FillBlender<FillFunctions.FromBlack<BlendFunctions.Difference>>(fill),
        BlendMode.VividLight => new FillBlender<FillFunctions.FromGrey<MoreBlendFunctions.VividLight>>(fill),
        BlendMode.LinearLight => new FillBlender<FillFunctions.FromGrey<MoreBlendFunctions.LinearLight>>(fill),
        BlendMode.HardMix => new FillBlender<FillFunctions.HardMix>(fill),
        _ => null,
    };
}
