using LayerTools.Model;
using LayerTools.Model.Effects;

namespace LayerTools.Tests.Pixels.Compositing;

/// <summary>Why a file that is drawn in full may still differ from the picture stored in it.</summary>
internal static class TruthReasons
{
    public static string? Find(LayerFile file)
    {
        if (file.GetLayers().Any(layer => layer is { BlendMode: BlendMode.Dissolve, EffectivelyVisible: true })) return "dissolve: nobody's noise is like another's";
        if (file.GetLayers().Any(layer => layer.EffectivelyVisible && HasHairline(layer, file))) return "outlines of a pixel around a path: they follow how each pixel of its soft edge was rounded, which is not known";
        return file.GetLayers().Any(HasEmptyClipped) ? "a pass-through group with nothing but an empty layer clipped to it was left out of the stored picture" : null;
    }

    private static bool HasHairline(Layer layer, LayerFile file) =>
        layer.Kind == LayerKind.Shape && layer.Detail.GetEffects(file.Detail).Any(effect => effect is OutlineEffect { Size: <= 1 });

    private static bool HasEmptyClipped(Layer layer) =>
        layer is { IsGroup: true, BlendMode: BlendMode.PassThrough, Clipped: false, EffectivelyVisible: true } && ClippingRun.Of(layer) is { Clipped.Count: > 0 } run && run.Clipped.All(clipped => clipped.Bounds.IsEmpty);
}
