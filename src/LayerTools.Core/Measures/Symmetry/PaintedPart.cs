using LayerTools.Model;
using LayerTools.Pixels;

namespace LayerTools.Measures.Symmetry;

/// <summary>A drawn part or figure in memory.</summary>
internal sealed class PaintedPart
{
    private readonly Raster raster;
    private readonly int left;
    private readonly int top;

    /// <param name="raster">The pixels.</param>
    /// <param name="left">The canvas column of the first one.</param>
    /// <param name="top">Its canvas row.</param>
    public PaintedPart(Raster raster, int left, int top)
    {
        this.raster = raster;
        this.left = left;
        this.top = top;
        Coverage = new CoveragePlane(FindPainted(raster, left, top));
        for (var y = Bounds.Top; y < Bounds.Bottom; y++)
        {
            var source = Row(y);
            var target = Coverage.Row(y);
            for (var x = 0; x < target.Length; x++) target[x] = source[(4 * x) + 3];
        }
    }

    /// <summary>The box of all pixels that are not fully transparent, canvas px.</summary>
    public Bounds Bounds => Coverage.Bounds;

    /// <summary>Opacity within <see cref="Bounds"/>.</summary>
    public CoveragePlane Coverage { get; }

    /// <summary>R, G, B, A of the pixels of a row of <see cref="Bounds"/>.</summary>
    public ReadOnlySpan<byte> Row(int y) => raster.Row(y - top).Slice(4 * (Bounds.Left - left), 4 * Bounds.Width);

    private static Bounds FindPainted(Raster raster, int left, int top)
    {
        var painted = Bounds.Empty;
        for (var y = 0; y < raster.Height; y++)
        {
            var row = raster.Row(y);
            var first = 3;
            while (first < row.Length && row[first] == 0) first += 4;
            if (first >= row.Length) continue;
            var last = row.Length - 1;
            while (row[last] == 0) last -= 4;
            painted = painted.Union(new Bounds(left + (first / 4), top + y, left + (last / 4) + 1, top + y + 1));
        }

        return painted;
    }
}
