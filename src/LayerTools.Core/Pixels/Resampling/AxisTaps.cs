using LayerTools.Model;

namespace LayerTools.Pixels.Resampling;

/// <summary>
/// For each new pixel along one axis, the old pixels it is made of and their weights, which add up to 1. Places are counted on the canvases, whose edges fall on each other, so that
/// the parts of a figure are cut into new pixels alike. All places are whole numbers and sums are exact, so that pixels across the centre line have the same weights in reverse.
/// </summary>
internal sealed class AxisTaps
{
    private const double Unit = 1L << 40;
    private readonly int first;
    private readonly int[] starts;
    private readonly int[] offsets;
    private readonly float[] weights;

    private AxisTaps(int first, int[] starts, int[] offsets, float[] weights)
    {
        this.first = first;
        this.starts = starts;
        this.offsets = offsets;
        this.weights = weights;
    }

    /// <param name="filter">How new pixels are made.</param>
    /// <param name="oldSize">The old canvas's length along the axis, px.</param>
    /// <param name="newSize">The new one's.</param>
    /// <param name="first">The first new pixel that is wanted, canvas px.</param>
    /// <param name="end">The one after the last.</param>
    /// <param name="firstOld">The first old pixel that counts, such as that at the edge of the canvas; null if all do.</param>
    /// <param name="endOld">The old pixel after the last that counts; null if all do.</param>
    public static AxisTaps Create(ResampleFilter filter, int oldSize, int newSize, int first, int end, int? firstOld = null, int? endOld = null)
    {
        var (starts, offsets, weights) = (new int[end - first], new int[end - first + 1], new List<float>());
        var exact = new List<double>();
        for (var i = first; i < end; i++)
        {
            exact.Clear();
            starts[i - first] = filter == ResampleFilter.Area ? AddShares(i, oldSize, newSize, exact) : AddCubic(i, oldSize, newSize, exact);
            var cut = Math.Min(exact.Count, Math.Max(0, (firstOld ?? int.MinValue) - (long)starts[i - first]));
            exact.RemoveRange(0, (int)cut);
            starts[i - first] += (int)cut;
            var kept = Math.Max(0, (endOld ?? int.MaxValue) - (long)starts[i - first]);
            if (kept < exact.Count) exact.RemoveRange((int)kept, exact.Count - (int)kept);

            // Rounded to whole numbers below 2^53 they add up to the same sum in any order.
            for (var k = 0; k < exact.Count; k++) exact[k] = Math.Round(exact[k] * Unit);
            var sum = exact.Sum();
            foreach (var weight in exact) weights.Add((float)(weight / sum));
            offsets[i - first + 1] = weights.Count;
        }

        return new AxisTaps(first, starts, offsets, [.. weights]);
    }

    /// <summary>The first old pixel that a new one is made of.</summary>
    public int StartOf(int pixel) => starts[pixel - first];

    /// <summary>The old pixel after the last.</summary>
    public int EndOf(int pixel) => starts[pixel - first] + offsets[pixel - first + 1] - offsets[pixel - first];

    /// <summary>The weights of the old pixels from the first on.</summary>
    public ReadOnlySpan<float> WeightsOf(int pixel) => weights.AsSpan(offsets[pixel - first], offsets[pixel - first + 1] - offsets[pixel - first]);

    private static int AddShares(long pixel, long oldSize, long newSize, List<double> weights)
    {
        // In units of 1/newSize old pixels, the new pixel covers [from, to).
        var (from, to) = (pixel * oldSize, (pixel + 1) * oldSize);
        var start = CanvasScale.Floor(from, 1, newSize);
        for (var j = start; j * newSize < to; j++) weights.Add((Math.Min(to, (j + 1) * newSize) - Math.Max(from, j * newSize)) / (double)oldSize);
        return (int)start;
    }

    private static int AddCubic(long pixel, long oldSize, long newSize, List<double> weights)
    {
        // The distance of two centres, (2i + 1)·old − (2j + 1)·new, in units of half an old pixel / new; unit is 1 where the filter is as wide as the coarser pixels.
        var unit = 2 * Math.Max(oldSize, newSize);
        var center = ((2 * pixel) + 1) * oldSize;
        var start = CanvasScale.Floor(center - (2 * unit) - newSize, 1, 2 * newSize) + 1;
        for (var j = start; center - (((2 * j) + 1) * newSize) is var distance && distance > -2 * unit; j++) weights.Add(Cubic(Math.Abs(distance) / (double)unit));
        return (int)start;
    }

    private static double Cubic(double t) => t < 1 ? (((1.5 * t) - 2.5) * t * t) + 1 : (((((-0.5 * t) + 2.5) * t) - 4) * t) + 2;
}
