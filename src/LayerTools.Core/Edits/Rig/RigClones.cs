using LayerTools.Model;
using LayerTools.Pixels.Compositing.Blending;
using LayerTools.Pixels.Compositing.Masks;

namespace LayerTools.Edits.Rig;

/// <summary>Copies of layers that share the stored channels of their originals, to be drawn or to be put into the baked file.</summary>
internal static class RigClones
{
    /// <summary>The layer as it is, without those in it.</summary>
    public static Layer Copy(Layer layer, LayerDetail? detail = null) => new(layer.Kind, layer.Name, detail ?? layer.Detail)
    {
        Id = layer.Id,
        BlendMode = layer.BlendMode,
        Visible = layer.Visible,
        Clipped = layer.Clipped,
        Locked = layer.Locked,
        LockFlags = layer.LockFlags,
        Mark = layer.Mark,
        Bounds = layer.Bounds,
        OpacityByte = layer.OpacityByte,
        FillOpacity = layer.FillOpacity,
        Mask = layer.Mask is null ? null : layer.Mask with { },
        Planes = [.. layer.Planes],
    };

    /// <summary>The layer with all that is in it, less what is left out.</summary>
    public static Layer CopyTree(Layer layer, Func<Layer, bool> isLeftOut)
    {
        var copy = Copy(layer);
        foreach (var child in layer.GetChildren().Where(child => !isLeftOut(child))) copy.Append(CopyTree(child, isLeftOut));
        return copy;
    }

    /// <summary>
    /// The layer to be drawn alone: switched on, opaque, in normal mode, and not clipped, but with its masks, its fill opacity, and the layers in it.
    /// Dissolve stays with the opacity that decides on its grain, since it needs nothing below it.
    /// </summary>
    public static Layer Alone(Layer layer, Func<Layer, bool> isLeftOut, bool keepsEffects = true)
    {
        var copy = CopyTree(layer, isLeftOut);
        copy.Detail = layer.Detail.WithoutBlending(keepsEffects);
        copy.Visible = true;
        copy.Clipped = false;
        if (!Blenders.FillActsAsOpacity(layer.BlendMode)) copy.FillOpacity = byte.MaxValue;
        if (layer.BlendMode == BlendMode.Dissolve && keepsEffects) return copy;
        copy.BlendMode = BlendMode.Normal;
        copy.OpacityByte = byte.MaxValue;
        return copy;
    }

    /// <summary>What a layer's clipped neighbours are cut to: its pixels and masks without effects and opacity.</summary>
    public static Layer Shape(Layer layer, Func<Layer, bool> isLeftOut)
    {
        var copy = Alone(layer, isLeftOut, keepsEffects: false);
        copy.FillOpacity = byte.MaxValue;
        return copy;
    }

    /// <summary>A group that does nothing but mask what is put into it.</summary>
    public static Layer MaskOnly(Layer group) => Shape(group, _ => true);

    /// <summary>Whether a mask of the layer's own is seen.</summary>
    public static bool HasActiveMask(Layer layer) => LayerMasks.Find(layer) is not { Stored: null, Path: null };
}
