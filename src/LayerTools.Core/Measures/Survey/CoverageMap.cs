using LayerTools.Model;

namespace LayerTools.Measures.Survey;

/// <summary>Which pixels of a rectangle a part covers, one bit each.</summary>
public sealed class CoverageMap
{
    private readonly ulong[] words;
    private readonly int wordsPerRow;

    /// <param name="bounds">The rectangle, canvas px.</param>
    public CoverageMap(Bounds bounds)
    {
        Bounds = bounds.IsEmpty ? Bounds.Empty : bounds;
        wordsPerRow = (Bounds.Width + 63) / 64;
        words = new ulong[checked(wordsPerRow * Bounds.Height)];
    }

    /// <summary>The rectangle; nothing outside it is covered.</summary>
    public Bounds Bounds { get; }

    /// <summary>Whether a pixel is covered, canvas px; false outside the rectangle.</summary>
    public bool this[int x, int y]
    {
        get
        {
            if (x < Bounds.Left || x >= Bounds.Right || y < Bounds.Top || y >= Bounds.Bottom) return false;
            var column = x - Bounds.Left;
            return (words[((y - Bounds.Top) * wordsPerRow) + (column >> 6)] >> (column & 63) & 1) != 0;
        }
    }

    /// <summary>The bits of a row, 64 px a word, the leftmost pixel in the lowest bit; bits beyond the rectangle are 0.</summary>
    /// <param name="y">The row, canvas px, inside the rectangle.</param>
    internal Span<ulong> Row(int y) => words.AsSpan((y - Bounds.Top) * wordsPerRow, wordsPerRow);
}
