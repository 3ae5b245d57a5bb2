using LayerTools.Model;

namespace LayerTools.Measures;

/// <summary>
/// Joins painted runs of pixels, row by row from the top, into islands: runs of neighbouring rows belong together where they overlap or touch at a corner.
/// Remembers one row of runs, and each island's box and area.
/// </summary>
/// <param name="threshold">The largest value that counts as unpainted.</param>
internal sealed class IslandRows(int threshold)
{
    private readonly List<int> parents = [];
    private readonly List<Bounds> boxes = [];
    private readonly List<long> areas = [];
    private List<(int From, int To, int Island)> above = [];
    private int lastRow;

    /// <summary>Adds a row.</summary>
    /// <param name="y">The row, below all rows before.</param>
    /// <param name="left">The column of the first value.</param>
    /// <param name="alpha">The values.</param>
    public void Add(int y, int left, ReadOnlySpan<byte> alpha)
    {
        if (y != lastRow + 1) above.Clear();
        lastRow = y;
        var runs = new List<(int From, int To, int Island)>();
        var first = 0;
        for (var x = 0; x < alpha.Length;)
        {
            if (alpha[x] <= threshold)
            {
                x++;
                continue;
            }

            var from = x;
            while (x < alpha.Length && alpha[x] > threshold) x++;
            var run = new Bounds(left + from, y, left + x, y + 1);
            while (first < above.Count && above[first].To < run.Left) first++;
            var island = -1;
            for (var i = first; i < above.Count && above[i].From <= run.Right; i++) island = island < 0 ? FindRoot(above[i].Island) : Join(island, above[i].Island);
            if (island < 0) island = Start();
            boxes[island] = boxes[island].Union(run);
            areas[island] += run.Width;
            runs.Add((run.Left, run.Right, island));
        }

        above = runs;
    }

    /// <summary>All islands, each with its box and its painted pixels.</summary>
    public IEnumerable<(Bounds Box, long Area)> Complete()
    {
        for (var island = 0; island < parents.Count; island++)
        {
            if (parents[island] == island) yield return (boxes[island], areas[island]);
        }
    }

    private int Start()
    {
        parents.Add(parents.Count);
        boxes.Add(Bounds.Empty);
        areas.Add(0);
        return parents.Count - 1;
    }

    private int Join(int one, int other)
    {
        (one, other) = (FindRoot(one), FindRoot(other));
        if (one == other) return one;
        parents[other] = one;
        boxes[one] = boxes[one].Union(boxes[other]);
        areas[one] += areas[other];
        return one;
    }

    private int FindRoot(int island)
    {
        while (parents[island] != island) island = parents[island] = parents[parents[island]];
        return island;
    }
}
