using LayerTools.Model;
using LayerTools.Pixels;

namespace LayerTools.Edits.Repair;

/// <summary>Finds the rectangle of what is painted on a layer, whatever its masks show.</summary>
internal static class AlphaBox
{
    /// <summary>The rectangle of all pixels with more alpha than a limit, canvas px; empty if there are none. A layer without alpha is painted all over.</summary>
    /// <param name="reader">Unpacks the channels of the layer's file.</param>
    /// <param name="layer">The layer.</param>
    /// <param name="limit">0 to 254 of 255.</param>
    /// <param name="cancellation">Ends the work early.</param>
    /// <exception cref="Errors.LayeredFileException">The channel is damaged, or the file changed on disk.</exception>
    public static Bounds Find(PixelReader reader, Layer layer, byte limit, CancellationToken cancellation)
    {
        using var rows = reader.OpenRows(layer, PlaneRole.Alpha);
        if (rows is null) return layer.Bounds;
        var samples = new byte[rows.RowBytes];
        var alpha = new byte[rows.Width];
        var box = Bounds.Empty;
        for (var y = 0; y < rows.Height; y++)
        {
            cancellation.ThrowIfCancellationRequested();
            rows.ReadRow(samples);
            SampleConverter.ToBytes(samples, alpha, rows.BitDepth, isLight: false);
            var first = Array.FindIndex(alpha, value => value > limit);
            if (first >= 0) box = box.Union(new Bounds(first, y, Array.FindLastIndex(alpha, value => value > limit) + 1, y + 1));
        }

        return box.IsEmpty ? box : box.Shift(layer.Bounds.Left, layer.Bounds.Top);
    }
}
