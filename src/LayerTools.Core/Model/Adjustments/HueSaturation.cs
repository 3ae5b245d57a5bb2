namespace LayerTools.Model.Adjustments;

/// <summary>Other hues, more or less colourful, lighter or darker.</summary>
/// <param name="Colorizes">Whether every pixel gets the same hue instead.</param>
/// <param name="Colorization">That hue (0 to 360°), its saturation (0 to 100) and a shift of lightness (−100 to 100).</param>
/// <param name="Master">The shift of all colours.</param>
/// <param name="Ranges">Shifts of single ranges of hues.</param>
internal sealed record HueSaturation(bool Colorizes, HueShift Colorization, HueShift Master, IReadOnlyList<HueRange> Ranges) : Adjustment("hue and saturation");
