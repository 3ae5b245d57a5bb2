using LayerTools.Model;
using LayerTools.Model.Fills;

namespace LayerTools.Pixels.Compositing.Fills;

/// <summary>Makes pixels of fills.</summary>
internal static class FillPixels
{
    /// <summary>The fill's pixels; null for a fill that cannot be drawn.</summary>
    /// <param name="fill">The fill.</param>
    /// <param name="file">The file, which holds patterns.</param>
    /// <param name="box">The layer's rectangle, canvas px, which a gradient may be fitted into.</param>
    public static PixelSource? Create(Fill fill, LayerFile file, FillBox box)
    {
        switch (fill)
        {
            case ColorFill color:
                return new ColorPixels(color.Color);
            case GradientFill gradient when IsUsual(gradient.Scale):
                return new GradientPixels(gradient, gradient.IsAligned && box is { Width: > 0, Height: > 0 } ? box : new FillBox(0, 0, file.Width, file.Height), MixedColors.GetCount(file));
            case PatternFill pattern when IsUsual(pattern.Scale):
                return file.Detail.FindPattern(pattern.PatternId) is { } picture ? new PatternPixels(picture, pattern) : null;
            default:
                return null;
        }
    }

    /// <summary>Why a fill cannot be drawn; null if it can.</summary>
    public static string? FindReason(Fill fill, LayerFile file) => fill switch
    {
        UndrawnFill undrawn => undrawn.Reason,
        GradientFill gradient when !IsUsual(gradient.Scale) => "gradient of impossible size",
        PatternFill pattern when !IsUsual(pattern.Scale) => "pattern of impossible size",
        PatternFill pattern when file.Detail.FindPattern(pattern.PatternId) is null => "pattern that the file does not hold in a usable form",
        _ => null,
    };

    private static bool IsUsual(double scale) => scale is > 0 and <= 1000;
}
