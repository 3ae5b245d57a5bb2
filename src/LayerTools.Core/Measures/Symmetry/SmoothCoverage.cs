using LayerTools.Model;

namespace LayerTools.Measures.Symmetry;

/// <summary>
/// Coverage smoothed by 1 2 1 in both directions, so that what is read between pixels differs little from what is read on them. One pixel wider on each side than what it
/// was made from, and one more of nothing around that.
/// </summary>
internal sealed class SmoothCoverage
{
    private const int Margin = 2;

    public SmoothCoverage(CoveragePlane plane)
    {
        Bounds = new Bounds(plane.Bounds.Left - Margin, plane.Bounds.Top - Margin, plane.Bounds.Right + Margin, plane.Bounds.Bottom + Margin);
        Values = new float[Bounds.Area];
        var width = Bounds.Width;
        for (var y = plane.Bounds.Top; y < plane.Bounds.Bottom; y++)
        {
            var row = plane.Row(y);
            var start = ((y - Bounds.Top) * width) + Margin;
            for (var x = 0; x < row.Length; x++)
            {
                if (row[x] == 0) continue;
                var unit = row[x] / (16f * byte.MaxValue);
                var at = start + x;
                Spread(at - width, unit);
                Spread(at, 2 * unit);
                Spread(at + width, unit);
            }
        }

        (CentreX, CentreY) = plane.FindCentre();
        foreach (var value in Values)
        {
            Sum += value;
            SumOfSquares += value * value;
        }
    }

    public Bounds Bounds { get; }

    /// <summary>0 to 1, rows from the top without padding.</summary>
    public float[] Values { get; }

    public double CentreX { get; }

    public double CentreY { get; }

    public double Sum { get; }

    public double SumOfSquares { get; }

    private void Spread(int at, float unit)
    {
        Values[at - 1] += unit;
        Values[at] += 2 * unit;
        Values[at + 1] += unit;
    }
}
