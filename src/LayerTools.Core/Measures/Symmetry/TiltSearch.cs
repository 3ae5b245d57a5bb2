namespace LayerTools.Measures.Symmetry;

/// <summary>
/// Finds the axis, upright or leaning, that fits best. Of one shape it passes not far from the centre of gravity, and all tilts are tried there on a small copy; of two
/// shapes apart it lies about halfway between and across the line that joins their centres. From there, and from the best upright axis, tilt and place are improved in turn.
/// </summary>
internal static class TiltSearch
{
    private const double Degree = Math.PI / 180;
    private const int WidestTilt = 45;
    private const int ScanStep = 3;
    private const double ScanShift = 1.5;

    /// <summary>Longest sides of the copies, px.</summary>
    private const int ScanSide = 56;
    private const int FineSide = 288;

    /// <summary>How far from the centre of gravity axes are tried, as a part of the shape's size: an arm stretched out pulls the centre, but not the axis, to its side.</summary>
    private const double ScanReach = 0.25;

    /// <summary>Fewer covered pixels than these say nothing about a tilt.</summary>
    private const double SmallestArea = 100;

    /// <summary>Shapes that agree nearly as well at every tilt are round: an ellipse of 100 to 98 loses less.</summary>
    private const double RoundMargin = 0.02;

    /// <summary>Of tilts that fit nearly as well, the smallest is taken: a square has two.</summary>
    private const double EqualMargin = 0.01;

    /// <summary>Less agreement is no symmetry.</summary>
    private const double LeastAgreement = 0.5;

    /// <summary>Finds the tilt.</summary>
    /// <param name="levels">The coverages.</param>
    /// <param name="doubledAxis">Twice the x of the upright axis that fits best.</param>
    /// <param name="cancellation">Stops the search.</param>
    public static Tilt Find(MirrorLevels levels, double doubledAxis, CancellationToken cancellation)
    {
        if (Math.Min(levels[0].One.Sum(), levels[0].Other.Sum()) < SmallestArea * byte.MaxValue) return new Tilt(null, null, "Too little is painted to tell a tilt.");
        var level = levels.FindLevel(pair => IsWithin(pair, ScanSide));
        var coarse = new TiltedOverlap(levels[level]);
        var starts = new List<Axis>();
        if (coarse.Apart > 0.05 * coarse.Size && FindBetween(coarse) is var between && Math.Abs(between) <= WidestTilt * Degree) starts.Add(new Axis(between, 0));
        if (coarse.Apart < coarse.Size)
        {
            var scan = Scan(coarse);
            if (scan.Max(axis => axis.Agreement) - scan.Min(axis => axis.Agreement) < RoundMargin) return new Tilt(null, null, "It is too round to have a tilt.");
            starts.AddRange(FindTops(scan));
        }

        cancellation.ThrowIfCancellationRequested();
        if (starts.Count == 0) return new Tilt(null, null, "The two lie above one another rather than side by side.");
        starts.Add(new Axis(0, (doubledAxis / (2 << level)) - coarse.MiddleX));
        var fine = new TiltedOverlap(levels[levels.FindLevel(pair => IsWithin(pair, FineSide))]);
        var found = starts.Select(start => Improve(coarse, start, rounds: 2)).OrderByDescending(axis => axis.Agreement).Take(3)
            .Select(axis => Improve(fine, axis with { Shift = axis.Shift * fine.Size / coarse.Size }, rounds: 3))
            .Where(axis => Math.Abs(axis.Angle) <= (WidestTilt + 0.5) * Degree).ToList();
        var most = found.Select(axis => axis.Agreement).DefaultIfEmpty().Max();
        if (most < LeastAgreement) return new Tilt(null, null, "Less than half agrees with its reflection, whatever the tilt.");
        var best = found.Where(axis => axis.Agreement >= most - EqualMargin).OrderBy(axis => Math.Abs(axis.Angle)).First();
        return new Tilt(best.Angle / Degree, best.Agreement, string.Empty);
    }

    private static bool IsWithin(MirrorPair pair, int side) => new[] { pair.One.Bounds, pair.Other.Bounds }.All(bounds => Math.Max(bounds.Width, bounds.Height) <= side);

    /// <summary>The tilt of the line that lies across the one that joins both centres.</summary>
    private static double FindBetween(TiltedOverlap overlap) =>
        overlap.ApartX < 0 ? Math.Atan2(-overlap.ApartY, -overlap.ApartX) : Math.Atan2(overlap.ApartY, overlap.ApartX);

    /// <summary>For each tilt the best of some axes near the centre.</summary>
    private static Axis[] Scan(TiltedOverlap overlap)
    {
        var steps = (int)Math.Ceiling(ScanReach * overlap.Size / ScanShift);
        return [.. Enumerable.Range(-WidestTilt / ScanStep, (2 * WidestTilt / ScanStep) + 1).Select(tilt => Enumerable.Range(-steps, (2 * steps) + 1)
            .Select(step => new Axis(tilt * ScanStep * Degree, step * ScanShift, overlap.Measure(tilt * ScanStep * Degree, step * ScanShift)))
            .Aggregate((best, axis) => axis.Agreement > best.Agreement ? axis : best))];
    }

    private static IEnumerable<Axis> FindTops(Axis[] scan) =>
        scan.Where((axis, i) => (i == 0 || axis.Agreement >= scan[i - 1].Agreement) && (i == scan.Length - 1 || axis.Agreement >= scan[i + 1].Agreement));

    private static Axis Improve(TiltedOverlap overlap, Axis axis, int rounds)
    {
        // A step moves what lies farthest from the axis by about two pixels.
        var turn = 2 / Math.Max(overlap.Apart, overlap.Size);
        var shift = 1.0;
        for (var round = 0; round < rounds; round++, turn /= 1.5, shift /= 1.5)
        {
            axis = axis with { Angle = Climb(angle => overlap.Measure(angle, axis.Shift), axis.Angle, turn) };
            axis = axis with { Shift = Climb(place => overlap.Measure(axis.Angle, place), axis.Shift, shift) };
        }

        return axis with { Agreement = overlap.Measure(axis.Angle, axis.Shift) };
    }

    /// <summary>Steps uphill, and then to the top of the parabola through the last three places.</summary>
    private static double Climb(Func<double, double> measure, double place, double step)
    {
        const int MostSteps = 30;
        var (before, here, after) = (measure(place - step), measure(place), measure(place + step));
        for (var steps = 0; steps < MostSteps && Math.Max(before, after) > here; steps++)
        {
            if (after >= before) (before, here, after, place) = (here, after, measure(place + (2 * step)), place + step);
            else (before, here, after, place) = (measure(place - (2 * step)), before, here, place - step);
        }

        return place + (step * AxisSearch.FindTop(before, here, after));
    }

    /// <summary>A line that may lean.</summary>
    /// <param name="Angle">Radians from upright.</param>
    /// <param name="Shift">Where it lies to the right of the middle, px.</param>
    /// <param name="Agreement">How well the coverages agree across it, 0 to 1.</param>
    private readonly record struct Axis(double Angle, double Shift, double Agreement = 0);
}
