using LayerTools.Model;
using LayerTools.Pixels.Parts;

namespace LayerTools.Deliveries;

/// <summary>Rows of a layer laid into a rectangle of the canvas, premultiplied, four bytes a pixel; transparent where the layer has nothing.</summary>
internal sealed class PlacedRows : IDisposable
{
    private readonly PartRows? rows;
    private readonly Bounds place;
    private readonly Bounds area;
    private readonly byte[] row;

    /// <param name="reader">The layer's file.</param>
    /// <param name="layer">The layer.</param>
    /// <param name="right">How far to move it to the right, px.</param>
    /// <param name="down">How far to move it down, px.</param>
    /// <param name="area">The rectangle to fill.</param>
    public PlacedRows(ContentReader reader, Layer layer, int right, int down, Bounds area)
    {
        this.area = area;
        row = new byte[checked(4 * area.Width)];
        if (layer.Bounds.IsEmpty || layer.Planes.Count == 0) return;
        place = layer.Bounds.Shift(right, down);
        rows = reader.OpenRows(layer);
        for (var y = place.Top; y < Math.Min(area.Top, place.Bottom); y++)
        {
            rows.ReadOpacity();
            rows.SkipColors();
        }
    }

    /// <summary>The next row, from the top of the rectangle; valid until the next call.</summary>
    /// <param name="y">Its canvas row.</param>
    public ReadOnlySpan<byte> Read(int y)
    {
        row.AsSpan().Clear();
        if (rows is null || y < place.Top || y >= place.Bottom) return row;
        var opacity = rows.ReadOpacity();
        var colors = rows.ReadColors();
        var red = colors.Red;
        var green = colors.Green;
        var blue = colors.Blue;
        var from = Math.Max(area.Left, place.Left);
        var to = Math.Min(area.Right, place.Right);
        for (var x = from; x < to; x++)
        {
            var source = x - place.Left;
            var alpha = opacity[source];
            if (alpha == 0) continue;
            var target = 4 * (x - area.Left);
            row[target] = Multiply(red[source], alpha);
            row[target + 1] = Multiply(green[source], alpha);
            row[target + 2] = Multiply(blue[source], alpha);
            row[target + 3] = alpha;
        }

        return row;
    }

    public void Dispose() => rows?.Dispose();

    private static byte Multiply(byte color, byte alpha) => (byte)(((color * alpha) + (byte.MaxValue / 2)) / byte.MaxValue);
}
