namespace LayerTools.Measures.Symmetry;

/// <summary>
/// Finds the upright axis across which Σ a·b is largest. That is where the sum of squared differences is smallest, since Σ (a − b)² = Σ a² + Σ b² − 2 Σ a·b and
/// the first two do not depend on the axis. All axes are tried on a small copy, and the best one is followed up to full size.
/// </summary>
internal static class AxisSearch
{
    /// <summary>Products that the search over all axes may cost.</summary>
    private const double CoarseBudget = 4e6;

    /// <summary>Sums are smoothed by these, which is the same as smoothing both coverages by 1 2 1; it makes the top round and the parabola true.</summary>
    private static readonly double[] Smoothing = [1 / 16.0, 4 / 16.0, 6 / 16.0, 4 / 16.0, 1 / 16.0];

    /// <summary>Twice the x of the best axis; null if no axis makes the coverages meet.</summary>
    public static double? FindDoubled(MirrorLevels levels, CancellationToken cancellation)
    {
        var level = levels.FindLevel(pair => (double)pair.One.Bounds.Area * pair.Other.Bounds.Width <= CoarseBudget);
        if (FindCoarse(levels[level]) is not { } best) return null;
        for (; level > 0; level--)
        {
            cancellation.ThrowIfCancellationRequested();
            best = 2 * Climb(new AxisSums(levels[level].SumProducts), best);
        }

        return Refine(new AxisSums(levels[0].SumProducts), best);
    }

    /// <summary>Where the parabola through values at −1, 0 and 1 is highest; 0 if it has no top.</summary>
    public static double FindTop(double before, double here, double after)
    {
        var bend = (2 * here) - before - after;
        return bend > 0 ? Math.Min(Math.Max((after - before) / (2 * bend), -1), 1) : 0;
    }

    private static int? FindCoarse(MirrorPair pair)
    {
        int? best = null;
        var most = 0L;
        for (var axis = pair.FirstAxis; axis <= pair.LastAxis; axis++)
        {
            if (pair.SumProducts(axis) is var sum && sum <= most) continue;
            most = sum;
            best = axis;
        }

        return best;
    }

    /// <summary>Steps uphill to a place whose neighbours are not higher.</summary>
    private static int Climb(AxisSums sums, int axis)
    {
        while (true)
        {
            var (before, here, after) = (sums[axis - 1], sums[axis], sums[axis + 1]);
            if (before > here && before >= after) axis--;
            else if (after > here) axis++;
            else return axis;
        }
    }

    /// <summary>The top of the parabola through three smoothed sums.</summary>
    private static double Refine(AxisSums sums, int axis)
    {
        axis = Climb(sums, axis);
        var (before, here, after) = (Smooth(sums, axis - 1), Smooth(sums, axis), Smooth(sums, axis + 1));
        while (after > here) (before, here, after, axis) = (here, after, Smooth(sums, axis + 2), axis + 1);
        while (before > here) (before, here, after, axis) = (Smooth(sums, axis - 2), before, here, axis - 1);
        return axis + FindTop(before, here, after);
    }

    private static double Smooth(AxisSums sums, int axis)
    {
        var sum = 0.0;
        for (var i = 0; i < Smoothing.Length; i++) sum += Smoothing[i] * sums[axis + i - (Smoothing.Length / 2)];
        return sum;
    }
}
