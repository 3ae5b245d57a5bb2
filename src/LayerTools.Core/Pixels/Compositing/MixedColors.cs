using LayerTools.Model;

namespace LayerTools.Pixels.Compositing;

/// <summary>The colours that a file's layers are mixed in.</summary>
internal static class MixedColors
{
    /// <summary>1 for grey and duotone, 3 for red, green and blue and for L*a*b*, 4 for inks.</summary>
    public static int GetCount(LayerFile file) => file.ColorMode switch { ColorMode.Rgb or ColorMode.Lab => 3, ColorMode.Cmyk => 4, _ => 1 };

    /// <summary>Whether they are grey or RGB, which described fills, effects and adjustments are made for.</summary>
    public static bool AreLight(LayerFile file) => file.ColorMode is ColorMode.Rgb or ColorMode.Grayscale or ColorMode.Duotone;
}
