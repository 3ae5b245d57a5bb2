using LayerTools.Model;

namespace LayerTools.Measures.Survey;

/// <summary>
/// Joins runs of pixels, row by row from the top, into regions: runs of neighbouring rows belong together where they overlap or touch at a corner.
/// Remembers one row of runs, the regions that reach it, and the largest of those that ended, so that no picture takes more memory than its width.
/// </summary>
/// <param name="most">How many of the largest regions are kept one by one.</param>
internal sealed class RegionRows(int most)
{
    private List<Run> above = [];
    private List<Run> runs = [];
    private List<Region> regions = [];
    private List<Region> next = [];
    private readonly List<int> parents = [];
    private readonly List<int> renamed = [];
    private readonly List<PartRegion> largest = [];
    private int row;
    private int firstAbove;

    /// <summary>Regions that ended and were not open.</summary>
    public int Count { get; private set; }

    /// <summary>The pixels of all of them, px².</summary>
    public long Area { get; private set; }

    /// <summary>The pixels of the smallest of them, px²; 0 if there are none.</summary>
    public long SmallestArea { get; private set; }

    /// <summary>Forgets everything.</summary>
    public void Restart()
    {
        above.Clear();
        runs.Clear();
        regions.Clear();
        parents.Clear();
        largest.Clear();
        (Count, Area, SmallestArea, row, firstAbove) = (0, 0, 0, 0, 0);
    }

    /// <summary>Begins a row; rows that are left out in between are without runs.</summary>
    /// <param name="y">The row, below all rows before.</param>
    public void BeginRow(int y)
    {
        EndRow();
        if (y != row + 1 && above.Count > 0) EndRow();
        row = y;
    }

    /// <summary>Adds a run to the row.</summary>
    /// <param name="from">The first column, right of all runs before and not touching them.</param>
    /// <param name="to">The column after the last.</param>
    /// <param name="isOpen">Whether the region it belongs to does not count.</param>
    public void Add(int from, int to, bool isOpen = false)
    {
        while (firstAbove < above.Count && above[firstAbove].To < from) firstAbove++;
        var found = -1;
        for (var i = firstAbove; i < above.Count && above[i].From <= to; i++)
        {
            var root = FindRoot(above[i].Region);
            found = found < 0 ? root : Join(found, root);
        }

        var box = new Bounds(from, row, to, row + 1);
        if (found < 0)
        {
            found = regions.Count;
            parents.Add(found);
            regions.Add(new Region(box, to - from, isOpen));
        }
        else
        {
            var region = regions[found];
            regions[found] = region with { Box = region.Box.Union(box), Area = region.Area + to - from, IsOpen = region.IsOpen || isOpen };
        }

        runs.Add(new Run(from, to, found));
    }

    /// <summary>Ends all regions; the largest first, then from the top and from the left.</summary>
    public IReadOnlyList<PartRegion> Complete()
    {
        EndRow();
        EndRow();
        Trim();
        return [.. largest];
    }

    /// <summary>Ends the regions that do not reach the row, and numbers the others anew.</summary>
    private void EndRow()
    {
        renamed.Clear();
        for (var i = 0; i < regions.Count; i++) renamed.Add(-1);
        next.Clear();
        for (var i = 0; i < runs.Count; i++)
        {
            var root = FindRoot(runs[i].Region);
            if (renamed[root] < 0)
            {
                renamed[root] = next.Count;
                next.Add(regions[root]);
            }

            runs[i] = runs[i] with { Region = renamed[root] };
        }

        for (var i = 0; i < regions.Count; i++)
        {
            if (renamed[i] < 0 && parents[i] == i) Finish(regions[i]);
        }

        (above, runs) = (runs, above);
        (regions, next) = (next, regions);
        runs.Clear();
        parents.Clear();
        for (var i = 0; i < regions.Count; i++) parents.Add(i);
        firstAbove = 0;
    }

    private void Finish(Region region)
    {
        if (region.IsOpen) return;
        SmallestArea = Count == 0 ? region.Area : Math.Min(SmallestArea, region.Area);
        Count++;
        Area += region.Area;
        largest.Add(new PartRegion(region.Box, region.Area));
        if (largest.Count >= 2 * most) Trim();
    }

    private void Trim()
    {
        largest.Sort((one, other) => GetRank(one).CompareTo(GetRank(other)));
        if (largest.Count > most) largest.RemoveRange(most, largest.Count - most);
    }

    private static (long, int, int, int, int) GetRank(PartRegion region) => (-region.Area, region.Box.Top, region.Box.Left, region.Box.Bottom, region.Box.Right);

    private int Join(int one, int other)
    {
        if (one == other) return one;
        var (kept, gone) = (regions[one], regions[other]);
        parents[other] = one;
        regions[one] = kept with { Box = kept.Box.Union(gone.Box), Area = kept.Area + gone.Area, IsOpen = kept.IsOpen || gone.IsOpen };
        return one;
    }

    private int FindRoot(int region)
    {
        while (parents[region] != region) region = parents[region] = parents[parents[region]];
        return region;
    }

    private readonly record struct Run(int From, int To, int Region);

    private readonly record struct Region(Bounds Box, long Area, bool IsOpen);
}
