using LayerTools.Model;

namespace LayerTools.Pixels.Colors;

/// <summary>White in a file's own colours.</summary>
internal static class Whites
{
    /// <summary>The value of each colour channel, 0 to 1.</summary>
    public static float[] Of(LayerFile file)
    {
        const float Full = 1f;
        const float LabNeutral = 128f / byte.MaxValue;
        switch (file.ColorMode)
        {
            case ColorMode.Lab:
                return [Full, LabNeutral, LabNeutral];
            case ColorMode.Cmyk:
                return [Full, Full, Full, Full];
            case ColorMode.Rgb:
                return [Full, Full, Full];
            default:
                return [Full];
        }
    }
}
