using LayerTools.Model;

namespace LayerTools.Measures.Survey;

/// <summary>Collects the covered pixels of a part, row by row, until their rectangle is known; keeps no word outside a row's covered stretch. Can be used for one part after the other.</summary>
/// <param name="memory">What all parts together may take.</param>
internal sealed class CoverageRows(SurveyMemory memory)
{
    /// <summary>Chunks grow from 8 kB to 512 kB, so that small parts take little.</summary>
    private const int FirstWords = 1 << 10;

    private const int MostDoublings = 6;

    private readonly List<ulong[]> chunks = [];
    private readonly List<Row> rows = [];
    private int chunk;
    private int used;
    private long taken;
    private Bounds box;

    /// <summary>Forgets all rows.</summary>
    public void Restart()
    {
        rows.Clear();
        chunks.Clear();
        (chunk, used, taken, box) = (0, 0, 0, Bounds.Empty);
    }

    /// <summary>Adds a row.</summary>
    /// <param name="y">The row, below all rows before.</param>
    /// <param name="left">The column of the first bit.</param>
    /// <param name="bits">Its bits.</param>
    public void Add(int y, int left, ReadOnlySpan<ulong> bits)
    {
        var begin = 0;
        while (begin < bits.Length && bits[begin] == 0) begin++;
        if (begin == bits.Length) return;
        var end = bits.Length;
        while (bits[end - 1] == 0) end--;
        var count = end - begin;
        Reserve(count);
        bits.Slice(begin, count).CopyTo(chunks[chunk].AsSpan(used));
        var first = left + (begin * WordBits.WordLength);
        rows.Add(new Row(y, first, chunk, used, count));
        used += count;
        box = box.Union(new Bounds(first + WordBits.FindFirst(bits[begin]), y, left + ((end - 1) * WordBits.WordLength) + WordBits.FindLast(bits[end - 1]) + 1, y + 1));
    }

    /// <summary>All rows as a map of the smallest rectangle that holds them.</summary>
    /// <exception cref="Errors.LayeredFileException">The maps of all parts take too much memory.</exception>
    public CoverageMap Complete()
    {
        memory.Take(((long)WordBits.GetWordCount(box.Width) * box.Height) - taken);
        var map = memory.Allocate(() => new CoverageMap(box));
        foreach (var row in rows) Copy(chunks[row.Chunk].AsSpan(row.Start, row.Count), row.Left - box.Left, map.Row(row.Y));
        return map;
    }

    /// <summary>Puts bits at a pixel of a row, which may be before its start as far as the bits there are not set.</summary>
    private static void Copy(ReadOnlySpan<ulong> bits, int at, Span<ulong> row)
    {
        var word = at >> 6;
        var shift = at & 63;
        for (var i = 0; i < bits.Length; i++, word++)
        {
            if (word >= 0 && word < row.Length) row[word] |= bits[i] << shift;
            if (shift > 0 && word + 1 >= 0 && word + 1 < row.Length) row[word + 1] |= bits[i] >> (64 - shift);
        }
    }

    private void Reserve(int count)
    {
        if (chunks.Count > chunk && chunks[chunk].Length - used >= count) return;
        if (chunks.Count > chunk) chunk++;
        used = 0;
        var length = Math.Max(FirstWords << Math.Min(chunks.Count, MostDoublings), count);
        memory.Take(length);
        taken += length;
        chunks.Add(memory.Allocate(() => new ulong[length]));
    }

    private readonly record struct Row(int Y, int Left, int Chunk, int Start, int Count);
}
