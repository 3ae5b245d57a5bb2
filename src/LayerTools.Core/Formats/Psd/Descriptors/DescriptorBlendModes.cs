using LayerTools.Model;

namespace LayerTools.Formats.Psd.Descriptors;

/// <summary>Blend modes by the names that descriptors use.</summary>
internal static class DescriptorBlendModes
{
    private static readonly Dictionary<string, BlendMode> ByName = new(StringComparer.Ordinal)
    {
        ["Nrml"] = BlendMode.Normal,
        ["Dslv"] = BlendMode.Dissolve,
        ["Drkn"] = BlendMode.Darken,
        ["Mltp"] = BlendMode.Multiply,
        ["CBrn"] = BlendMode.ColorBurn,
        ["linearBurn"] = BlendMode.LinearBurn,
        ["darkerColor"] = BlendMode.DarkerColor,
        ["Lghn"] = BlendMode.Lighten,
        ["Scrn"] = BlendMode.Screen,
        ["CDdg"] = BlendMode.ColorDodge,
        ["linearDodge"] = BlendMode.LinearDodge,
        ["lighterColor"] = BlendMode.LighterColor,
        ["Ovrl"] = BlendMode.Overlay,
        ["SftL"] = BlendMode.SoftLight,
        ["HrdL"] = BlendMode.HardLight,
        ["vividLight"] = BlendMode.VividLight,
        ["linearLight"] = BlendMode.LinearLight,
        ["pinLight"] = BlendMode.PinLight,
        ["hardMix"] = BlendMode.HardMix,
        ["Dfrn"] = BlendMode.Difference,
        ["Xclu"] = BlendMode.Exclusion,
        ["blendSubtraction"] = BlendMode.Subtract,
        ["blendDivide"] = BlendMode.Divide,
        ["H   "] = BlendMode.Hue,
        ["Strt"] = BlendMode.Saturation,
        ["Clr "] = BlendMode.Color,
        ["Lmns"] = BlendMode.Luminosity,
    };

    public static BlendMode Read(Descriptor descriptor, string key = "Md  ") =>
        descriptor.GetEnum(key) is not { } name ? BlendMode.Normal : ByName.TryGetValue(name, out var mode) ? mode : BlendMode.Unknown;
}
