using LayerTools.Measures.Survey;
using LayerTools.Model;

namespace LayerTools.Measures.Cover;

/// <summary>
/// Measures how far a part is painted on behind each pixel of a seam. Looks at tiles around the seam only, so that the work grows with its length and not with the size of the parts.
/// Keeps its memory between seams; not for several threads at once.
/// </summary>
/// <param name="maximumDepth">Depths are measured up to this, px.</param>
/// <param name="canvas">The canvas; what lies outside is never opened.</param>
internal sealed class SeamProbe(int maximumDepth, Bounds canvas)
{
    /// <summary>An unpainted pixel at depth d lies d + 1 px from its seam pixel; what is farther than this is deep.</summary>
    private readonly int reach = maximumDepth + 1;

    /// <summary>The pixel of the seam that is nearest to an unpainted one must be nearer than all others, which lie within twice the reach.</summary>
    private readonly int margin = Math.Max((2 * (maximumDepth + 1)) + SeamPixel.Spread, SeamPixel.GroundReach(maximumDepth));

    private readonly NearestPixels nearest = new();
    private ulong[] above = [];
    private ulong[] below = [];
    private int[] reaches = [];

    /// <summary>Columns and rows of a tile, px: about twice the margin is the cheapest.</summary>
    private int TileSize => Math.Max(64, WordBits.GetWordCount(2 * margin) * 64);

    /// <summary>Measures all pixels of a seam, in an order that depends on their places alone.</summary>
    /// <param name="part">What the part covers.</param>
    /// <param name="neighbour">What the part in front covers.</param>
    /// <param name="seam">The pixels of the seam.</param>
    /// <param name="pixels">Takes them with their depths.</param>
    public void Measure(CoverageMap part, CoverageMap neighbour, CoverageMap seam, List<SeamPixel> pixels)
    {
        var bounds = seam.Bounds;
        for (var top = bounds.Top; top < bounds.Bottom; top += TileSize)
        {
            for (var left = bounds.Left; left < bounds.Right; left += TileSize)
            {
                var box = Shrink(seam, new Bounds(left, top, Math.Min(bounds.Right, left + TileSize), Math.Min(bounds.Bottom, top + TileSize)));
                if (!box.IsEmpty) MeasureTile(part, neighbour, seam, box, pixels);
            }
        }
    }

    /// <summary>The box of the seam's pixels in a tile.</summary>
    private static Bounds Shrink(CoverageMap seam, Bounds tile)
    {
        var box = Bounds.Empty;
        Span<ulong> words = stackalloc ulong[WordBits.GetWordCount(tile.Width)];
        for (var y = tile.Top; y < tile.Bottom; y++)
        {
            CoverageBits.Read(seam, y, tile.Left, words);
            CoverageBits.Trim(words, tile.Width);
            for (var i = 0; i < words.Length; i++)
            {
                if (words[i] == 0) continue;
                var first = tile.Left + (i << 6) + WordBits.FindFirst(words[i]);
                var last = tile.Left + (i << 6) + WordBits.FindLast(words[i]);
                box = box.Union(new Bounds(first, y, last + 1, y + 1));
            }
        }

        return box;
    }

    private void MeasureTile(CoverageMap part, CoverageMap neighbour, CoverageMap seam, Bounds box, List<SeamPixel> pixels)
    {
        if (reaches.Length < box.Area) reaches = new int[box.Area];
        reaches.AsSpan(0, (int)box.Area).Fill(SeamPixel.Deep);
        var window = CoverageBits.Inflate(box, margin);
        var words = WordBits.GetWordCount(window.Width) * window.Height;
        if (above.Length < words) (above, below) = (new ulong[words], new ulong[words]);
        Load(part, below, window);
        Load(neighbour, above, window);
        var isShallow = HasUnpainted(window, box) && FindReaches(window, box, seam);
        if (isShallow) SolveGround(window);
        Collect(window, box, seam, isShallow, pixels);
    }

    private static void Load(CoverageMap map, ulong[] target, Bounds window)
    {
        var count = WordBits.GetWordCount(window.Width);
        for (var y = 0; y < window.Height; y++)
        {
            var row = target.AsSpan(y * count, count);
            CoverageBits.Read(map, window.Top + y, window.Left, row);
            CoverageBits.Trim(row, window.Width);
        }
    }

    /// <summary>Whether the neighbour covers anything within reach where the part is not painted.</summary>
    private bool HasUnpainted(Bounds window, Bounds box)
    {
        var count = WordBits.GetWordCount(window.Width);
        var rows = CoverageBits.Inflate(box, reach + SeamPixel.Spread).Intersect(canvas);
        for (var i = (rows.Top - window.Top) * count; i < (rows.Bottom - window.Top) * count; i++)
        {
            if ((above[i] & ~below[i]) != 0) return true;
        }

        return false;
    }

    /// <summary>Gives each unpainted pixel to the pixel of the seam that it lies behind, if that is the nearest pixel which the neighbour leaves free.</summary>
    /// <returns>Whether any pixel of the seam is less deep than the maximum.</returns>
    private bool FindReaches(Bounds window, Bounds box, CoverageMap seam)
    {
        var count = WordBits.GetWordCount(window.Width);
        Solve(window, static (covered, _) => ~covered);
        var found = false;
        var search = CoverageBits.Inflate(box, reach + SeamPixel.Spread).Intersect(canvas);
        for (var y = search.Top - window.Top; y < search.Bottom - window.Top; y++)
        {
            var columns = ReadOnlySpan<int>.Empty;
            for (var i = 0; i < count; i++)
            {
                for (var word = above[(y * count) + i] & ~below[(y * count) + i]; word != 0; word &= word - 1)
                {
                    var x = (i << 6) + WordBits.FindFirst(word);
                    if (window.Left + x < search.Left || window.Left + x >= search.Right) continue;
                    if (columns.IsEmpty) columns = nearest.SolveRow(y);
                    if (columns[x] < 0) continue;
                    var (column, row) = (columns[x], nearest.RowAt(columns[x], y));
                    var distance = ((column - x) * (column - x)) + ((row - y) * (row - y));
                    if (distance < reach * reach && seam[window.Left + column, window.Top + row]) found |= Reach(window.Left + column, window.Top + row, distance, box, seam);
                }
            }
        }

        return found;
    }

    /// <summary>Notes how near an unpainted pixel is to the nearest pixel of the seam, there and beside it.</summary>
    /// <returns>Whether there are such pixels of the seam in the box.</returns>
    private bool Reach(int x, int y, int distanceSquared, Bounds box, CoverageMap seam)
    {
        var found = false;
        for (var row = Math.Max(box.Top, y - SeamPixel.Spread); row <= Math.Min(box.Bottom - 1, y + SeamPixel.Spread); row++)
        {
            for (var column = Math.Max(box.Left, x - SeamPixel.Spread); column <= Math.Min(box.Right - 1, x + SeamPixel.Spread); column++)
            {
                if (!seam[column, row]) continue;
                ref var least = ref reaches[((row - box.Top) * box.Width) + column - box.Left];
                least = Math.Min(least, distanceSquared);
                found = true;
            }
        }

        return found;
    }

    private void SolveGround(Bounds window) => Solve(window, static (covered, painted) => ~(covered | painted));

    /// <summary>Finds the pixels nearest to what a combination of neighbour and part makes.</summary>
    private void Solve(Bounds window, Func<ulong, ulong, ulong> combine)
    {
        var count = WordBits.GetWordCount(window.Width);
        Span<ulong> row = stackalloc ulong[count];
        nearest.Begin(window.Width, window.Height);
        for (var y = 0; y < window.Height; y++)
        {
            for (var i = 0; i < count; i++) row[i] = combine(above[(y * count) + i], below[(y * count) + i]);
            CoverageBits.Trim(row, window.Width);
            nearest.AddRow(y, row);
        }

        nearest.EndColumns();
    }

    /// <summary>The square of the distance to open ground right beside a pixel; <see cref="SeamPixel.Deep"/> if there is none.</summary>
    private int FindGroundNearby(Bounds window, int x, int y)
    {
        const int Near = SeamPixel.NearGround;
        var count = WordBits.GetWordCount(window.Width);
        var least = SeamPixel.Deep;
        for (var down = 1 - Near; down < Near; down++)
        {
            for (var across = 1 - Near; across < Near; across++)
            {
                var distance = (down * down) + (across * across);
                if (distance >= Near * Near || distance >= least) continue;
                var column = x + across - window.Left;
                var word = ((y + down - window.Top) * count) + (column >> 6);
                if (((above[word] | below[word]) >> (column & 63) & 1) == 0) least = distance;
            }
        }

        return least;
    }

    private void Collect(Bounds window, Bounds box, CoverageMap seam, bool isShallow, List<SeamPixel> pixels)
    {
        var groundReach = SeamPixel.GroundReach(maximumDepth);
        for (var y = box.Top; y < box.Bottom; y++)
        {
            var columns = ReadOnlySpan<int>.Empty;
            for (var x = box.Left; x < box.Right; x++)
            {
                if (!seam[x, y]) continue;
                var reachSquared = reaches[((y - box.Top) * box.Width) + x - box.Left];
                var groundSquared = reachSquared == SeamPixel.Deep ? FindGroundNearby(window, x, y) : SeamPixel.Deep;
                if (isShallow && reachSquared != SeamPixel.Deep)
                {
                    if (columns.IsEmpty) columns = nearest.SolveRow(y - window.Top);
                    var column = columns[x - window.Left];
                    if (column >= 0)
                    {
                        var (across, down) = (column - (x - window.Left), nearest.RowAt(column, y - window.Top) - (y - window.Top));
                        var distance = (across * across) + (down * down);
                        if (distance < groundReach * groundReach) groundSquared = distance;
                    }
                }

                pixels.Add(new SeamPixel(x, y, reachSquared, groundSquared));
            }
        }
    }
}
