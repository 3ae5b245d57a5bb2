using LayerTools.Model;

namespace LayerTools.Pixels.Compositing.Blending;

/// <summary>A layer's mode and opacities as they are drawn.</summary>
internal static class LayerBlending
{
    /// <summary>A mode that is not in the table is drawn as normal; whoever cannot accept that asks <see cref="CompositorSupport"/> first.</summary>
    public static Blender GetBlender(Layer layer)
    {
        if (!CompositorSupport.CanMix(layer)) return Blenders.Normal;
        return FillIsInBlender(layer) ? Blenders.TryGetFilled(layer.BlendMode, layer.FillOpacity / (float)byte.MaxValue)! : Blenders.TryGet(layer.BlendMode) ?? Blenders.Normal;
    }

    /// <summary>The chosen opacities together, 0 to 1, less a fill opacity that <see cref="GetBlender"/> takes into account.</summary>
    public static float GetOpacity(Layer layer, Opacities opacities)
    {
        var opacity = opacities.HasFlag(Opacities.Layer) ? layer.OpacityByte / (float)byte.MaxValue : 1f;
        return opacities.HasFlag(Opacities.Fill) && !FillIsInBlender(layer) ? opacity * layer.FillOpacity / byte.MaxValue : opacity;
    }

    /// <summary>A layer that cuts through and then covers the hole itself needs no care.</summary>
    public static bool CutsThrough(Layer layer) =>
        layer.Detail.Blending.Knockout != Knockout.None && (layer.FillOpacity < byte.MaxValue || layer.BlendMode != BlendMode.Normal);

    private static bool FillIsInBlender(Layer layer) => layer.FillOpacity < byte.MaxValue && !Blenders.FillActsAsOpacity(layer.BlendMode);
}
