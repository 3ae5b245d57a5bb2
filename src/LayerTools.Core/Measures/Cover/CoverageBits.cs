using LayerTools.Measures.Survey;
using LayerTools.Model;

namespace LayerTools.Measures.Cover;

/// <summary>Rows of coverage at any column, 64 px a word, so that parts whose rectangles differ can be combined word by word.</summary>
internal static class CoverageBits
{
    /// <summary>Reads a row from a column on; what lies outside the map is not covered.</summary>
    /// <param name="map">The map.</param>
    /// <param name="y">The row, canvas px.</param>
    /// <param name="left">The column of the lowest bit, canvas px.</param>
    /// <param name="words">Takes the bits.</param>
    public static void Read(CoverageMap map, int y, int left, Span<ulong> words)
    {
        if (y < map.Bounds.Top || y >= map.Bounds.Bottom)
        {
            words.Clear();
            return;
        }

        var row = map.Row(y);
        var offset = left - map.Bounds.Left;
        var (index, shift) = (offset >> 6, offset & 63);
        if (shift == 0)
        {
            for (var i = 0; i < words.Length; i++) words[i] = WordAt(row, index + i);
            return;
        }

        var low = WordAt(row, index);
        for (var i = 0; i < words.Length; i++)
        {
            var high = WordAt(row, index + i + 1);
            words[i] = (low >> shift) | (high << (64 - shift));
            low = high;
        }
    }

    /// <summary>Clears the bits behind the width of a row.</summary>
    public static void Trim(Span<ulong> words, int width)
    {
        if ((width & 63) != 0) words[words.Length - 1] &= ulong.MaxValue >> (64 - (width & 63));
    }

    /// <summary>Whether any bit is set.</summary>
    public static bool Any(ReadOnlySpan<ulong> words)
    {
        foreach (var word in words)
        {
            if (word != 0) return true;
        }

        return false;
    }

    /// <summary>The rectangle with a margin on all sides.</summary>
    public static Bounds Inflate(Bounds bounds, int margin) => new(bounds.Left - margin, bounds.Top - margin, bounds.Right + margin, bounds.Bottom + margin);

    private static ulong WordAt(ReadOnlySpan<ulong> row, int index) => (uint)index < (uint)row.Length ? row[index] : 0;
}
