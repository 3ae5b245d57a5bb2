using LayerTools.Measures.Survey;
using LayerTools.Model;

namespace LayerTools.Measures.Cover;

/// <summary>Measures parts of a stack one after the other; not for several threads at once.</summary>
/// <param name="file">The file.</param>
/// <param name="stack">Its parts, front to back.</param>
/// <param name="canvas">Its canvas.</param>
/// <param name="wanted">How far parts should be painted on, px.</param>
/// <param name="maximumDepth">Depths are measured up to this, px.</param>
internal sealed class PartProbe(LayerFile file, IReadOnlyList<CoverPart> stack, Bounds canvas, double wanted, int maximumDepth)
{
    /// <summary>The sides of a pixel but the left one.</summary>
    private static readonly (int Across, int Down)[] Sides = [(1, 0), (0, -1), (0, 1)];

    private readonly SeamProbe seams = new(maximumDepth, canvas);

    /// <summary>Measures a part.</summary>
    /// <param name="index">Its place in the stack.</param>
    /// <param name="cancellation">Stops the work.</param>
    public PartResult Measure(int index, CancellationToken cancellation)
    {
        var part = stack[index];
        var area = part.Coverage.Bounds.Intersect(canvas);
        var (painted, visible) = (Copy(part.Coverage, area), Copy(part.Coverage, area));
        var overlaps = new long[index];
        for (var i = 0; i < index; i++)
        {
            cancellation.ThrowIfCancellationRequested();
            if (stack[i].Hides) overlaps[i] = Hide(painted, stack[i].Coverage, visible);
        }

        var (all, seen) = (Count(painted), Count(visible));
        var total = new PartCover
        {
            FilePath = file.Path,
            LayerNumber = part.Layer.LayerNumber,
            LayerPath = part.Path,
            Area = all,
            VisibleArea = seen,
            HiddenArea = all - seen,
            VisiblePercent = all == 0 ? null : Math.Round(100.0 * seen / all, 1),
            NeighbourCount = overlaps.Count(overlap => overlap > 0),
            WantedDepth = wanted,
            MaximumDepth = maximumDepth,
        };
        return seen == 0 ? Describe(total, overlaps, _ => []) : Describe(total, overlaps, i => FindSeam(part, visible, stack[i], cancellation));
    }

    /// <summary>The pixels of the seam of one part with one in front of it.</summary>
    public IReadOnlyList<SeamPixel> FindSeam(int index, int front, CancellationToken cancellation)
    {
        var visible = Copy(stack[index].Coverage, stack[index].Coverage.Bounds.Intersect(canvas));
        for (var i = 0; i < index; i++)
        {
            if (stack[i].Hides) Hide(visible, stack[i].Coverage, visible);
        }

        return FindSeam(stack[index], visible, stack[front], cancellation);
    }

    /// <summary>Tells about each neighbour, then about all.</summary>
    private PartResult Describe(PartCover total, long[] overlaps, Func<int, List<SeamPixel>> findSeam)
    {
        var records = new List<SeamCover>();
        var depths = new List<double>();
        for (var i = 0; i < overlaps.Length; i++)
        {
            if (!stack[i].Hides) continue;
            var seam = SeamSummary.Of(findSeam(i), wanted, maximumDepth);
            if (seam is not null) depths.AddRange(seam.Depths);
            if (overlaps[i] > 0 || seam is not null) records.Add(Describe(total, stack[i], overlaps[i], seam));
        }

        depths.Sort();
        return new PartResult(
            total with
            {
                SeamLength = records.Sum(record => record.SeamLength),
                ShallowLength = records.Sum(record => record.ShallowLength),
                SmallestDepth = records.Min(record => record.SmallestDepth),
                MedianDepth = SeamSummary.Median(depths),
                WorstNeighbour = records.Where(record => record.ShallowLength > 0).OrderByDescending(record => record.ShallowLength).FirstOrDefault()?.Neighbour,
            },
            records);
    }

    private static SeamCover Describe(PartCover part, CoverPart neighbour, long overlap, SeamSummary? seam) => new()
    {
        FilePath = part.FilePath,
        LayerNumber = part.LayerNumber,
        LayerPath = part.LayerPath,
        NeighbourNumber = neighbour.Layer.LayerNumber,
        Neighbour = neighbour.Path,
        VisibleArea = part.VisibleArea,
        HiddenArea = part.HiddenArea,
        OverlapArea = overlap,
        SeamLength = seam?.Length ?? 0,
        CountedLength = seam?.Depths.Count ?? 0,
        ShallowLength = seam?.ShallowLength ?? 0,
        SmallestDepth = seam?.SmallestDepth,
        MedianDepth = seam is null ? null : SeamSummary.Median(seam.Depths),
        X = seam?.Place.X,
        Y = seam?.Place.Y,
        WantedDepth = part.WantedDepth,
        MaximumDepth = part.MaximumDepth,
    };

    private static CoverageMap Copy(CoverageMap map, Bounds area)
    {
        var copy = new CoverageMap(area);
        for (var y = area.Top; y < area.Bottom; y++)
        {
            CoverageBits.Read(map, y, area.Left, copy.Row(y));
            CoverageBits.Trim(copy.Row(y), area.Width);
        }

        return copy;
    }

    private static long Count(CoverageMap map)
    {
        long count = 0;
        for (var y = map.Bounds.Top; y < map.Bounds.Bottom; y++)
        {
            foreach (var word in map.Row(y)) count += WordBits.Count(word);
        }

        return count;
    }

    /// <summary>Takes what a part in front covers out of what is visible.</summary>
    /// <returns>The pixels that both parts cover.</returns>
    private static long Hide(CoverageMap painted, CoverageMap front, CoverageMap visible)
    {
        var common = painted.Bounds.Intersect(front.Bounds);
        if (common.IsEmpty) return 0;
        long overlap = 0;
        var start = (common.Left - painted.Bounds.Left) >> 6;
        var left = painted.Bounds.Left + (start << 6);
        Span<ulong> covered = stackalloc ulong[WordBits.GetWordCount(common.Right - left)];
        for (var y = common.Top; y < common.Bottom; y++)
        {
            CoverageBits.Read(front, y, left, covered);
            var own = painted.Row(y).Slice(start, covered.Length);
            var seen = visible.Row(y).Slice(start, covered.Length);
            for (var i = 0; i < own.Length; i++)
            {
                overlap += WordBits.Count(covered[i] & own[i]);
                seen[i] &= ~covered[i];
            }
        }

        return overlap;
    }

    private List<SeamPixel> FindSeam(CoverPart part, CoverageMap visible, CoverPart front, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        var pixels = new List<SeamPixel>();
        if (FindSeam(visible, front.Coverage) is { } seam) seams.Measure(part.Coverage, front.Coverage, seam, pixels);
        return pixels;
    }

    /// <summary>The visible pixels that have a pixel of a part in front at one of their four sides; null if there are none.</summary>
    private static CoverageMap? FindSeam(CoverageMap visible, CoverageMap front)
    {
        if (front.Bounds.IsEmpty) return null;
        var box = visible.Bounds.Intersect(CoverageBits.Inflate(front.Bounds, 1));
        if (box.IsEmpty) return null;
        var seam = new CoverageMap(box);
        Span<ulong> beside = stackalloc ulong[WordBits.GetWordCount(box.Width)];
        Span<ulong> touched = stackalloc ulong[beside.Length];
        var found = false;
        for (var y = box.Top; y < box.Bottom; y++)
        {
            var row = seam.Row(y);
            CoverageBits.Read(visible, y, box.Left, row);
            CoverageBits.Trim(row, box.Width);
            if (!CoverageBits.Any(row)) continue;
            CoverageBits.Read(front, y, box.Left - 1, touched);
            foreach (var (across, down) in Sides)
            {
                CoverageBits.Read(front, y + down, box.Left + across, beside);
                for (var i = 0; i < beside.Length; i++) touched[i] |= beside[i];
            }

            for (var i = 0; i < row.Length; i++) row[i] &= touched[i];
            found |= CoverageBits.Any(row);
        }

        return found ? seam : null;
    }
}
