using LayerTools.Model;
using LayerTools.Model.Adjustments;

namespace LayerTools.Tests.Pixels.Compositing;

/// <summary>Why a file that is drawn in full may still differ from the picture stored in it.</summary>
internal static class TruthReasons
{
    public static string? Find(LayerFile file)
    {
        if (file.GetLayers().Any(layer => layer is { BlendMode: BlendMode.Dissolve, EffectivelyVisible: true })) return "dissolve: nobody's noise is like another's";
        if (file.ColorMode == ColorMode.Rgb && file.GetLayers().Any(layer => layer is { EffectivelyVisible: true, Detail.Adjustment: Exposure { Stops: < 0 } })) return "exposure darkens RGB by a curve that is not the profile's: 43 becomes 14, as 2.2 as exponent would have it";
        return file.GetLayers().Any(HasEmptyClipped) ? "a pass-through group with nothing but an empty layer clipped to it was left out of the stored picture" : null;
    }

    private static bool HasEmptyClipped(Layer layer) =>
        layer is { IsGroup: true, BlendMode: BlendMode.PassThrough, Clipped: false, EffectivelyVisible: true } && ClippingRun.Of(layer) is { Clipped.Count: > 0 } run && run.Clipped.All(clipped => clipped.Bounds.IsEmpty);
}
