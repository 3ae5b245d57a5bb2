using System.Numerics;

namespace LayerTools.Measures.Symmetry;

/// <summary>Sums over runs of bytes, many at a time.</summary>
internal static class ByteProducts
{
    /// <summary>So many that no 32-bit sum of products can overflow, also with the shortest vectors.</summary>
    private const int Chunk = 1 << 16;

    /// <summary>Σ a · b.</summary>
    public static long Dot(byte[] one, int oneStart, byte[] two, int twoStart, int count)
    {
        var sum = 0L;
        for (var start = 0; start < count; start += Chunk) sum += DotChunk(one, oneStart + start, two, twoStart + start, Math.Min(Chunk, count - start));
        return sum;
    }

    /// <summary>Σ min(a, b).</summary>
    public static long Min(byte[] one, int oneStart, byte[] two, int twoStart, int count)
    {
        var sum = 0L;
        for (var start = 0; start < count; start += Chunk) sum += MinChunk(one, oneStart + start, two, twoStart + start, Math.Min(Chunk, count - start));
        return sum;
    }

    private static long DotChunk(byte[] one, int oneStart, byte[] two, int twoStart, int count)
    {
        var sums = Vector<uint>.Zero;
        var i = 0;
        for (; i <= count - Vector<byte>.Count; i += Vector<byte>.Count)
        {
            Vector.Widen(new Vector<byte>(one, oneStart + i), out var oneLow, out var oneHigh);
            Vector.Widen(new Vector<byte>(two, twoStart + i), out var twoLow, out var twoHigh);
            Vector.Widen(oneLow * twoLow, out var first, out var second);
            Vector.Widen(oneHigh * twoHigh, out var third, out var fourth);
            sums += first + second + third + fourth;
        }

        var sum = 0L;
        for (var lane = 0; lane < Vector<uint>.Count; lane++) sum += sums[lane];
        for (; i < count; i++) sum += one[oneStart + i] * two[twoStart + i];
        return sum;
    }

    private static long MinChunk(byte[] one, int oneStart, byte[] two, int twoStart, int count)
    {
        var sums = Vector<uint>.Zero;
        var i = 0;
        for (; i <= count - Vector<byte>.Count; i += Vector<byte>.Count)
        {
            Vector.Widen(Vector.Min(new Vector<byte>(one, oneStart + i), new Vector<byte>(two, twoStart + i)), out var low, out var high);
            Vector.Widen(low + high, out var first, out var second);
            sums += first + second;
        }

        var sum = 0L;
        for (var lane = 0; lane < Vector<uint>.Count; lane++) sum += sums[lane];
        for (; i < count; i++) sum += Math.Min(one[oneStart + i], two[twoStart + i]);
        return sum;
    }
}
