using LayerTools.Model;
using LayerTools.Pixels.Parts;

namespace LayerTools.Deliveries;

/// <summary>Rows of a layer laid into a rectangle of the canvas, opacity and colours apart; transparent where the layer has nothing.</summary>
internal sealed class PlacedRows : IDisposable
{
    private readonly PartRows? rows;
    private readonly Bounds place;
    private readonly Bounds area;
    private readonly byte[][] channels;
    private bool isClear = true;

    /// <param name="reader">The layer's file.</param>
    /// <param name="layer">The layer.</param>
    /// <param name="painted">The rectangle of what is painted in it.</param>
    /// <param name="right">How far to move it to the right, px.</param>
    /// <param name="down">How far to move it down, px.</param>
    /// <param name="area">The rectangle to fill; at least what is painted lies in it.</param>
    public PlacedRows(ContentReader reader, Layer layer, Bounds painted, int right, int down, Bounds area)
    {
        this.area = area;
        channels = [new byte[area.Width], new byte[area.Width], new byte[area.Width], new byte[area.Width]];
        if (painted.IsEmpty) return;
        place = layer.Bounds.Shift(right, down);
        rows = reader.OpenRows(layer);
        for (var y = place.Top; y < Math.Min(area.Top, place.Bottom); y++)
        {
            rows.ReadOpacity();
            rows.SkipColors();
        }
    }

    /// <summary>The opacity of the row that was read.</summary>
    public ReadOnlySpan<byte> Opacity => channels[3];

    /// <summary>Red, green or blue of the row that was read, not premultiplied; what transparent pixels have means nothing.</summary>
    public ReadOnlySpan<byte> Color(int channel) => channels[channel];

    /// <summary>Reads the next row, from the top of the rectangle.</summary>
    /// <param name="y">Its canvas row.</param>
    public void Read(int y)
    {
        if (rows is null || y < place.Top || y >= place.Bottom)
        {
            Clear();
            return;
        }

        var from = Math.Max(area.Left, place.Left);
        var length = Math.Min(area.Right, place.Right) - from;
        var opacity = rows.ReadOpacity().Slice(from - place.Left, length);
        if (SampleRows.FindFirstOther(opacity, 0) < 0)
        {
            rows.SkipColors();
            Clear();
            return;
        }

        isClear = false;
        var colors = rows.ReadColors();
        colors.Red.Slice(from - place.Left, length).CopyTo(channels[0].AsSpan(from - area.Left));
        colors.Green.Slice(from - place.Left, length).CopyTo(channels[1].AsSpan(from - area.Left));
        colors.Blue.Slice(from - place.Left, length).CopyTo(channels[2].AsSpan(from - area.Left));
        opacity.CopyTo(channels[3].AsSpan(from - area.Left));
    }

    public void Dispose() => rows?.Dispose();

    private void Clear()
    {
        if (isClear) return;
        foreach (var channel in channels) channel.AsSpan().Clear();
        isClear = true;
    }
}
