using LayerTools.Model;

namespace LayerTools.Measures.Symmetry;

/// <summary>Opacity of the pixels in a rectangle, one byte each; nothing is painted outside.</summary>
internal sealed class CoveragePlane
{
    public CoveragePlane(Bounds bounds)
    {
        Bounds = bounds.IsEmpty ? Bounds.Empty : bounds;
        Values = new byte[Bounds.Area];
    }

    public Bounds Bounds { get; }

    /// <summary>Rows from the top without padding.</summary>
    public byte[] Values { get; }

    public Span<byte> Row(int y) => Values.AsSpan(RowStart(y), Bounds.Width);

    /// <summary>Where a row begins in <see cref="Values"/>.</summary>
    public int RowStart(int y) => (y - Bounds.Top) * Bounds.Width;

    public double Sum()
    {
        var sum = 0L;
        foreach (var value in Values) sum += value;
        return sum;
    }

    /// <summary>The mean place of what is painted, in the plane's own pixels.</summary>
    public (double X, double Y) FindCentre()
    {
        double sum = 0, sumX = 0, sumY = 0;
        for (var y = Bounds.Top; y < Bounds.Bottom; y++)
        {
            var row = Row(y);
            long inRow = 0, weighed = 0;
            for (var x = 0; x < row.Length; x++)
            {
                inRow += row[x];
                weighed += (long)row[x] * x;
            }

            sum += inRow;
            sumX += weighed + ((Bounds.Left + 0.5) * inRow);
            sumY += (y + 0.5) * inRow;
        }

        return (sumX / sum, sumY / sum);
    }

    /// <summary>
    /// Half as large: a pixel [x, x+1) is the mean of the four that lie in [2x, 2x+2). Planes of one canvas share one grid, so that an axis at x lies at x/2 in all of them.
    /// </summary>
    public CoveragePlane Halve()
    {
        var half = new CoveragePlane(new Bounds(Bounds.Left >> 1, Bounds.Top >> 1, (Bounds.Right + 1) >> 1, (Bounds.Bottom + 1) >> 1));
        var sums = new int[half.Bounds.Width];
        for (var y = half.Bounds.Top; y < half.Bounds.Bottom; y++)
        {
            Array.Clear(sums, 0, sums.Length);
            for (var source = Math.Max(2 * y, Bounds.Top); source < Math.Min((2 * y) + 2, Bounds.Bottom); source++) AddRow(Row(source), Bounds.Left & 1, sums);
            var row = half.Row(y);
            for (var x = 0; x < sums.Length; x++) row[x] = (byte)((sums[x] + 2) >> 2);
        }

        return half;
    }

    /// <summary>The same rectangle with each row's pixels in opposite order.</summary>
    public CoveragePlane Reverse()
    {
        var reversed = new CoveragePlane(Bounds);
        for (var y = Bounds.Top; y < Bounds.Bottom; y++)
        {
            var row = reversed.Row(y);
            Row(y).CopyTo(row);
            row.Reverse();
        }

        return reversed;
    }

    private static void AddRow(ReadOnlySpan<byte> row, int phase, int[] sums)
    {
        for (var x = 0; x < row.Length; x++) sums[(x + phase) >> 1] += row[x];
    }
}
