using LayerTools.Model;
using LayerTools.Model.Fills;
using LayerTools.Pixels.Compositing.Fills;
using LayerTools.Pixels.Compositing.Masks;

namespace LayerTools.Pixels.Compositing;

/// <summary>Which of a file's layers are drawn from their description instead of stored pixels, and the rectangles that follow from it.</summary>
internal sealed class DescribedContent(LayerFile file)
{
    private Bounds Canvas => new(0, 0, file.Width, file.Height);

    /// <summary>Whether the layer is a fill whose look the file only describes.</summary>
    public static bool IsLiveFill(Layer layer) => layer.Kind is LayerKind.Fill or LayerKind.Shape && !layer.HasStoredPixels;

    /// <summary>Whether the layer's pixels are made from its description.</summary>
    public bool Has(Layer layer) => IsLiveFill(layer) || IsSeenThrough(layer);

    /// <summary>
    /// Whether the layer has effects and a see-through fill. Effects follow the whole shape then, not what its stored pixels show of it
    /// (observed in a real file), so that shape and fill are told apart by drawing both from their description.
    /// </summary>
    public bool IsSeenThrough(Layer layer) =>
        MixedColors.AreLight(file) && (layer.Kind is LayerKind.Shape or LayerKind.Fill)
        && layer.Detail.Features.HasFlag(LayerFeatures.Effects) && !layer.Detail.Features.HasFlag(LayerFeatures.PathStroke)
        && (layer.Kind == LayerKind.Fill || layer.Detail.VectorPath is { IsDisabled: false })
        && layer.Detail.Fill is GradientFill { Gradient.IsOpaque: false } fill && FillPixels.FindReason(fill, file) is null;

    /// <summary>The pixels of a layer's fill; null where there is none that can be drawn.</summary>
    public PixelSource? CreateFill(Layer layer) => MixedColors.AreLight(file) && layer.Detail.Fill is { } fill ? FillPixels.Create(fill, file, GetFillBox(layer)) : null;

    /// <summary>What a gradient is fitted into: the canvas, or the part of it that path and mask leave. (Observed in real files.)</summary>
    public FillBox GetFillBox(Layer layer)
    {
        var box = FillBox.Of(layer.Kind is LayerKind.Fill or LayerKind.Shape ? Canvas : layer.ContentBounds);
        if (layer.Kind == LayerKind.Shape && LayerMasks.Find(layer, asDescribed: true).Path is { } mask && CreatePath(mask) is { Outside: 0f, Box: { } path }) box = path;
        return LayerMasks.Find(layer).Stored is { HidesOutside: true } stored ? box.Intersect(FillBox.Of(stored.Bounds)) : box;
    }

    /// <summary>The layer's rectangle as far as paths and masks leave it.</summary>
    public Bounds GetSeenBounds(Layer layer)
    {
        var isDescribed = Has(layer);
        var bounds = layer.IsGroup ? layer.ContentBounds : isDescribed ? Canvas : layer.Bounds;
        if (isDescribed && LayerMasks.Find(layer, asDescribed: true).Path is { Feather: <= 0, Density: >= 1f } mask && CreatePath(mask) is { Outside: 0f } path) bounds = path.Bounds;
        return LayerMasks.Find(layer).Stored is { HidesOutside: true, Feather: <= 0 } stored ? bounds.Intersect(stored.Bounds) : bounds;
    }

    private PathFill CreatePath(PathMask mask) => new(mask.Path, file.Width, file.Height);
}
