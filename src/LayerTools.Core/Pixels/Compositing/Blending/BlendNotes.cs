using LayerTools.Model;
using LayerTools.Pixels.Compositing.Masks;

namespace LayerTools.Pixels.Compositing.Blending;

/// <summary>Names what of a layer's masks and blending follows a definition that no real file at hand has confirmed.</summary>
internal static class BlendNotes
{
    public static IEnumerable<string> Find(Layer layer)
    {
        var rules = layer.Detail.Blending;
        if (layer.BlendMode == BlendMode.Dissolve) yield return "dissolve, with a noise of our own";
        if (layer.FillOpacity < byte.MaxValue && !Blenders.FillActsAsOpacity(layer.BlendMode)) yield return $"fill opacity in blend mode {layer.BlendMode}";
        if (LayerMasks.Find(layer) is { Stored.Feather: > 0 } or { Path.Feather: > 0 }) yield return "feathered mask";
        if (rules.Ranges.Count > 0) yield return "blending ranges";
        if (rules.ExcludedChannels.Count > 0) yield return "channels left out of blending";
        if (LayerBlending.CutsThrough(layer)) yield return "a layer that cuts through";
    }
}
