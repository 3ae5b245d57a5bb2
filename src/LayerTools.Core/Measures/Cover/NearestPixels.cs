using LayerTools.Measures.Survey;

namespace LayerTools.Measures.Cover;

/// <summary>
/// Finds for each pixel of a window the nearest pixel of a set, exactly and in linear time: first along columns, then the lower envelope of parabolas along rows
/// (Felzenszwalb and Huttenlocher, "Distance Transforms of Sampled Functions", Theory of Computing 8, 2012), here in whole numbers and keeping which pixel is the nearest.
/// Of several equally near ones it is the one farthest left, then the upper one.
/// </summary>
/// <remarks>The memory is kept from one window to the next. Rows and columns count from the window's corner.</remarks>
internal sealed class NearestPixels
{
    /// <summary>Stands for "none in this column": farther than any window is high.</summary>
    private const int None = -(1 << 14);

    private int width;
    private int height;
    private int[] rows = [];
    private int[] columns = [];
    private int[] apexes = [];
    private int[] starts = [];

    /// <summary>Begins a window; at most 8192 px a side, so that squares stay whole numbers of 32 bits.</summary>
    public void Begin(int windowWidth, int windowHeight)
    {
        (width, height) = (windowWidth, windowHeight);
        if (rows.Length < width * height) rows = new int[width * height];
        if (columns.Length >= width) return;
        (columns, apexes, starts) = (new int[width], new int[width], new int[width]);
    }

    /// <summary>Takes which pixels of a row belong to the set; rows come from the top down, and bits behind the width are 0.</summary>
    public void AddRow(int y, ReadOnlySpan<ulong> members)
    {
        var row = rows.AsSpan(y * width, width);
        if (y == 0) row.Fill(None);
        else rows.AsSpan((y - 1) * width, width).CopyTo(row);
        for (var i = 0; i < members.Length; i++)
        {
            if (members[i] == ulong.MaxValue)
            {
                row.Slice(i << 6, 64).Fill(y);
                continue;
            }

            for (var word = members[i]; word != 0; word &= word - 1) row[(i << 6) + WordBits.FindFirst(word)] = y;
        }
    }

    /// <summary>Ends the columns, once all rows are there.</summary>
    public void EndColumns()
    {
        for (var y = height - 2; y >= 0; y--)
        {
            var row = rows.AsSpan(y * width, width);
            var below = rows.AsSpan((y + 1) * width, width);
            for (var x = 0; x < row.Length; x++)
            {
                if (below[x] > y && below[x] - y < y - row[x]) row[x] = below[x];
            }
        }
    }

    /// <summary>For each pixel of a row the column of the nearest pixel of the set, -1 if the window has none. Valid until the next call.</summary>
    public ReadOnlySpan<int> SolveRow(int y)
    {
        var row = rows.AsSpan(y * width, width);
        var last = -1;
        for (var x = 0; x < width; x++)
        {
            if (row[x] == None) continue;
            while (last >= 0 && Distance(row, y, apexes[last], starts[last]) > Distance(row, y, x, starts[last])) last--;
            if (last < 0)
            {
                (apexes[++last], starts[last]) = (x, 0);
                continue;
            }

            var start = 1 + LastOf(row, y, apexes[last], x);
            if (start < width) (apexes[++last], starts[last]) = (x, start);
        }

        for (var x = width - 1; x >= 0; x--)
        {
            if (last < 0)
            {
                columns[x] = -1;
                continue;
            }

            columns[x] = apexes[last];
            if (x == starts[last] && last > 0) last--;
        }

        return columns.AsSpan(0, width);
    }

    /// <summary>The row of the set's pixel in a column that is nearest to a row.</summary>
    public int RowAt(int x, int y) => rows[(y * width) + x];

    private static int Distance(ReadOnlySpan<int> row, int y, int apex, int x) => ((x - apex) * (x - apex)) + ((row[apex] - y) * (row[apex] - y));

    /// <summary>The last column where the left of two parabolas is not above the right one.</summary>
    private static int LastOf(ReadOnlySpan<int> row, int y, int left, int right)
    {
        var rise = (right * right) - (left * left) + ((row[right] - y) * (row[right] - y)) - ((row[left] - y) * (row[left] - y));
        var run = 2 * (right - left);
        return rise >= 0 ? rise / run : -((run - 1 - rise) / run);
    }
}
