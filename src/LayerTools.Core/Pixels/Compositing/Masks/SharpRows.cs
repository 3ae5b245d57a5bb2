using LayerTools.Model;

namespace LayerTools.Pixels.Compositing.Masks;

/// <summary>The rows of a mask before it is feathered.</summary>
internal static class SharpRows
{
    /// <summary>The rows of a stored mask in a rectangle, from the top. The row is reused.</summary>
    public static IEnumerable<float[]> Read(PixelReader reader, Layer layer, StoredMask mask, int bitDepth, Bounds bounds)
    {
        var row = new float[bounds.Width];
        if (layer.FindPlane(mask.Role) is null) yield break;
        using var window = new PlaneWindow(reader, layer, mask.Role, bitDepth, bounds);
        for (var y = bounds.Top; y < bounds.Bottom; y++)
        {
            if (window.Touches(y, y + 1)) window.MoveTo(y, y + 1);
            window.Read(y, bounds.Left, row, mask.Outside);
            yield return row;
        }
    }

    /// <summary>The rows of a filled path in a rectangle, from the top. The row is reused.</summary>
    public static IEnumerable<float[]> Read(PathFill path, Bounds bounds)
    {
        var row = new float[bounds.Width];
        for (var y = bounds.Top; y < bounds.Bottom; y++)
        {
            path.Fill(y, bounds.Left, row);
            yield return row;
        }
    }
}
