using LayerTools.Model;

namespace LayerTools.Tests.Pixels.Compositing;

/// <summary>Why a file that is drawn in full may still differ from the picture stored in it.</summary>
internal static class TruthReasons
{
    public static string? Find(LayerFile file)
    {
        if (file.GetLayers().Any(layer => layer is { BlendMode: BlendMode.Dissolve, EffectivelyVisible: true })) return "dissolve: nobody's noise is like another's";
        return file.GetLayers().Any(HasEmptyClipped) ? "a pass-through group with nothing but an empty layer clipped to it was left out of the stored picture" : null;
    }

    private static bool HasEmptyClipped(Layer layer) =>
        layer is { IsGroup: true, BlendMode: BlendMode.PassThrough, Clipped: false, EffectivelyVisible: true } && ClippingRun.Of(layer) is { Clipped.Count: > 0 } run && run.Clipped.All(clipped => clipped.Bounds.IsEmpty);
}
