using LayerTools.Model;
using LayerTools.Pixels.Compositing.Masks;

namespace LayerTools.Pixels.Compositing;

/// <summary>The windows that a plan's steps read from: stored channels, feathered masks and what effects make of a shape.</summary>
internal sealed class PlanWindows(LayerFile file, PixelReader reader) : IDisposable
{
    private readonly List<RowWindow> windows = [];

    public IReadOnlyList<RowWindow> All => windows;

    public void Add(RowWindow window) => windows.Add(window);

    /// <summary>A window on one of a layer's channels; null if the layer has no such channel.</summary>
    /// <param name="layer">The layer.</param>
    /// <param name="role">Which channel.</param>
    /// <param name="area">Where samples will be asked for, canvas px.</param>
    public PlaneWindow? AddChannel(Layer layer, PlaneRole role, Bounds area)
    {
        if (layer.FindPlane(role) is null) return null;
        var window = new PlaneWindow(reader, layer, role, file.BitDepth, area);
        windows.Add(window);
        return window;
    }

    /// <summary>How much a layer's masks let through in a rectangle; null if it has none.</summary>
    /// <param name="layer">The layer.</param>
    /// <param name="masks">Those of its masks that count.</param>
    /// <param name="path">The vector mask among them, filled; null if there is none.</param>
    /// <param name="area">Where coverage will be asked for, canvas px.</param>
    public ICoverage? AddMasks(Layer layer, LayerMasks masks, PathFill? path, Bounds area)
    {
        var stored = masks.Stored is null ? null : AddStored(layer, masks.Stored, area);
        var vector = path is null ? null : AddPath(layer, masks.Path!, path, area);
        return stored is null || vector is null ? stored ?? vector : new CoveragePair(stored, vector);
    }

    public void Dispose()
    {
        foreach (var window in windows) window.Dispose();
    }

    private ICoverage AddStored(Layer layer, StoredMask mask, Bounds area)
    {
        if (!(mask.Feather > 0) || mask.Bounds.IsEmpty) return new MaskCoverage(mask.Bounds.IsEmpty ? null : AddChannel(layer, mask.Role, area), mask);
        return new SoftCoverage(AddSoft(layer, mask.Bounds, area, mask.Outside, mask.Feather, bounds => SharpRows.Read(reader, layer, mask, file.BitDepth, bounds)), mask.Density, mask.IsInverted);
    }

    private ICoverage AddPath(Layer layer, PathMask mask, PathFill path, Bounds area)
    {
        if (!(mask.Feather > 0)) return new PathCoverage(path, mask.Density);
        return new SoftCoverage(AddSoft(layer, path.Bounds, area, path.Outside, mask.Feather, bounds => SharpRows.Read(path, bounds)), mask.Density, isInverted: false);
    }

    private SoftWindow AddSoft(Layer layer, Bounds inner, Bounds area, float outside, double sigma, Func<Bounds, IEnumerable<float[]>> readRows)
    {
        var window = new SoftWindow(layer, inner, area, outside, sigma, readRows);
        windows.Add(window);
        return window;
    }
}
