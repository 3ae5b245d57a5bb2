using LayerTools.Model;
using LayerTools.Pixels.Compositing.Masks;

namespace LayerTools.Pixels.Parts;

/// <summary>Lets a mask cut the opacity of a layer's rows, from the top of the layer down.</summary>
internal sealed class MaskRows : IDisposable
{
    private readonly StoredMask mask;
    private readonly Bounds layer;
    private readonly ByteRows rows;
    private readonly byte[] weights = new byte[256];

    public MaskRows(StoredMask mask, Bounds layer, ByteRows rows)
    {
        this.mask = mask;
        this.layer = layer;
        this.rows = rows;
        rows.SkipNext(Math.Min(Math.Max(layer.Top - mask.Bounds.Top, 0), mask.Bounds.Height));
        for (var value = 0; value < weights.Length; value++) weights[value] = (byte)((mask.Weigh(value / 255f) * 255) + 0.5f);
    }

    /// <summary>Multiplies the opacity of a row by the mask.</summary>
    /// <param name="y">Canvas row.</param>
    /// <param name="opacity">The layer's row.</param>
    public void Apply(int y, Span<byte> opacity)
    {
        var outside = weights[mask.DefaultColor];
        var common = layer.Intersect(mask.Bounds);
        if (y < common.Top || y >= common.Bottom)
        {
            if (y >= mask.Bounds.Top && y < mask.Bounds.Bottom) rows.SkipNext();
            Multiply(opacity, outside);
            return;
        }

        var samples = rows.ReadNext().Slice(common.Left - mask.Bounds.Left, common.Width);
        Multiply(opacity.Slice(0, common.Left - layer.Left), outside);
        var inside = opacity.Slice(common.Left - layer.Left, common.Width);
        for (var x = 0; x < inside.Length; x++) inside[x] = Multiply(inside[x], weights[samples[x]]);
        Multiply(opacity.Slice(common.Right - layer.Left), outside);
    }

    public void Dispose() => rows.Dispose();

    private static void Multiply(Span<byte> opacity, byte by)
    {
        if (by == 255) return;
        for (var x = 0; x < opacity.Length; x++) opacity[x] = Multiply(opacity[x], by);
    }

    private static byte Multiply(byte one, byte other) => (byte)((one * other + 127) / 255);
}
