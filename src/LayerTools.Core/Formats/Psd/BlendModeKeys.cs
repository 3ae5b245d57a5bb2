using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>The keys files store for blend modes (PSD File Formats Specification, 'Layer records', blend mode key).</summary>
internal static class BlendModeKeys
{
    private static readonly (BlendMode Mode, string Key)[] Table =
    [
        (BlendMode.Normal, "norm"), (BlendMode.Multiply, "mul "), (BlendMode.Screen, "scrn"), (BlendMode.Overlay, "over"),
        (BlendMode.Darken, "dark"), (BlendMode.Lighten, "lite"), (BlendMode.ColorDodge, "div "), (BlendMode.ColorBurn, "idiv"),
        (BlendMode.HardLight, "hLit"), (BlendMode.SoftLight, "sLit"), (BlendMode.Difference, "diff"), (BlendMode.Exclusion, "smud"),
        (BlendMode.Hue, "hue "), (BlendMode.Saturation, "sat "), (BlendMode.Color, "colr"), (BlendMode.Luminosity, "lum "),
        (BlendMode.Dissolve, "diss"), (BlendMode.LinearBurn, "lbrn"), (BlendMode.LinearDodge, "lddg"), (BlendMode.DarkerColor, "dkCl"),
        (BlendMode.LighterColor, "lgCl"), (BlendMode.VividLight, "vLit"), (BlendMode.LinearLight, "lLit"), (BlendMode.PinLight, "pLit"),
        (BlendMode.HardMix, "hMix"), (BlendMode.Subtract, "fsub"), (BlendMode.Divide, "fdiv"), (BlendMode.PassThrough, "pass"),
    ];

    private static readonly Dictionary<uint, BlendMode> Modes = Table.ToDictionary(row => PsdKey.Parse(row.Key), row => row.Mode);
    private static readonly Dictionary<BlendMode, uint> Keys = Table.ToDictionary(row => row.Mode, row => PsdKey.Parse(row.Key));

    public static BlendMode Read(uint key) => Modes.TryGetValue(key, out var mode) ? mode : BlendMode.Unknown;

    /// <summary>The key for a mode; the stored one where it already says so, which keeps keys that are not known.</summary>
    public static uint Write(BlendMode mode, uint stored) => Read(stored) == mode || !Keys.TryGetValue(mode, out var key) ? stored : key;
}
