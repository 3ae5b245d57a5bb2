#if NET8_0_OR_GREATER
using System.Numerics;
#endif

namespace LayerTools.Measures.Survey;

/// <summary>Rows of bits in words of 64, the leftmost pixel in the lowest bit of the first word.</summary>
internal static class WordBits
{
    /// <summary>Pixels in a word.</summary>
    public const int WordLength = 64;

    /// <summary>Words for a row.</summary>
    public static int GetWordCount(int pixels) => (int)(((long)pixels + WordLength - 1) / WordLength);

    /// <summary>How many bits are set.</summary>
    public static int Count(ulong word)
    {
#if NET8_0_OR_GREATER
        return BitOperations.PopCount(word);
#else
        word -= (word >> 1) & 0x5555555555555555;
        word = (word & 0x3333333333333333) + ((word >> 2) & 0x3333333333333333);
        return (int)((((word + (word >> 4)) & 0x0F0F0F0F0F0F0F0F) * 0x0101010101010101) >> 56);
#endif
    }

    /// <summary>The place of the lowest bit that is set; 64 if there is none.</summary>
    public static int FindFirst(ulong word)
    {
#if NET8_0_OR_GREATER
        return BitOperations.TrailingZeroCount(word);
#else
        return Count(~word & (word - 1));
#endif
    }

    /// <summary>The place of the highest bit that is set; −1 if there is none.</summary>
    public static int FindLast(ulong word)
    {
#if NET8_0_OR_GREATER
        return WordLength - 1 - BitOperations.LeadingZeroCount(word);
#else
        for (var shift = 1; shift < WordLength; shift *= 2) word |= word >> shift;
        return Count(word) - 1;
#endif
    }

    /// <summary>How many bits are set from one pixel up to another.</summary>
    /// <param name="words">The row.</param>
    /// <param name="from">The first pixel, inside the row.</param>
    /// <param name="to">The pixel after the last, at most the end of the row.</param>
    public static long Count(ReadOnlySpan<ulong> words, int from, int to)
    {
        if (from >= to) return 0;
        var (first, last) = (from / WordLength, (to - 1) / WordLength);
        var begin = ulong.MaxValue << (from % WordLength);
        var end = ulong.MaxValue >> (WordLength - 1 - ((to - 1) % WordLength));
        if (first == last) return Count(words[first] & begin & end);
        long count = Count(words[first] & begin) + Count(words[last] & end);
        for (var word = first + 1; word < last; word++) count += Count(words[word]);
        return count;
    }

    /// <summary>The first set pixel at or after one; the end of the row if there is none.</summary>
    public static int FindSet(ReadOnlySpan<ulong> words, int from) => Find(words, from, flip: 0);

    /// <summary>The first pixel at or after one that is not set; the end of the row if there is none.</summary>
    public static int FindClear(ReadOnlySpan<ulong> words, int from) => Find(words, from, flip: ulong.MaxValue);

    private static int Find(ReadOnlySpan<ulong> words, int from, ulong flip)
    {
        var index = from / WordLength;
        if (index >= words.Length) return words.Length * WordLength;
        var word = (words[index] ^ flip) & (ulong.MaxValue << (from % WordLength));
        while (word == 0)
        {
            if (++index == words.Length) return index * WordLength;
            word = words[index] ^ flip;
        }

        return (index * WordLength) + FindFirst(word);
    }
}
