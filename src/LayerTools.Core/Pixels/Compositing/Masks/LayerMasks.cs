using LayerTools.Model;

namespace LayerTools.Pixels.Compositing.Masks;

/// <summary>Which of a layer's masks take part in its picture.</summary>
/// <param name="Stored">The mask whose samples are used, or null.</param>
/// <param name="Path">The vector mask that is filled anew, or null.</param>
internal sealed record LayerMasks(StoredMask? Stored, PathMask? Path)
{
    /// <summary>
    /// Finds the masks that count. Where the file has painted and vector mask rendered together, without density and feather (channel -2 with flag 8), those
    /// samples are used as they are. With density or feather each mask is made of its own: the rendered samples are without them (measured on real files).
    /// A shape's stored pixels are cut out by its path already, so that only the painted mask is left.
    /// </summary>
    /// <param name="layer">The layer.</param>
    /// <param name="asDescribed">Whether a shape is drawn from its description, although it has stored pixels.</param>
    public static LayerMasks Find(Layer layer, bool asDescribed = false)
    {
        var mask = layer.Mask;
        var path = layer.Detail.VectorPath is { IsDisabled: false } found ? found : null;
        if (layer.Kind == LayerKind.Shape && ((layer.HasStoredPixels && !asDescribed) || path is null)) return new LayerMasks(FindPainted(layer), Path: null);
        if (path is null) return new LayerMasks(FindOwn(layer), Path: null);
        if (mask is { IsRendered: true, IsDisabled: false, HasSoftening: false } && layer.FindPlane(PlaneRole.UserMask) is not null) return new LayerMasks(FindOwn(layer), Path: null);
        return new LayerMasks(FindPainted(layer), new PathMask(path, GetDensity(mask?.VectorDensity), mask?.VectorFeather ?? 0));
    }

    private static StoredMask? FindPainted(Layer layer)
    {
        if (layer.Mask is not { IsRendered: true } mask) return FindOwn(layer);
        if (mask.PaintedBounds is not { } bounds || (mask.PaintedFlags & LayerMask.DisabledFlag) != 0) return null;
        return new StoredMask(PlaneRole.PaintedMask, bounds, mask.PaintedDefaultColor, (mask.PaintedFlags & LayerMask.InvertedFlag) != 0, GetDensity(mask.UserDensity), mask.UserFeather ?? 0);
    }

    private static StoredMask? FindOwn(Layer layer) => layer.Mask is not { IsDisabled: false } mask
        ? null
        : new StoredMask(PlaneRole.UserMask, mask.Bounds, mask.DefaultColor, mask.IsInverted, GetDensity(mask.UserDensity), mask.UserFeather ?? 0);

    private static float GetDensity(byte? density) => (density ?? byte.MaxValue) / (float)byte.MaxValue;
}
