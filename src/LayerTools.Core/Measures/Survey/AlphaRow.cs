#if NET8_0_OR_GREATER
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
#else
using System.Runtime.InteropServices;
#endif

namespace LayerTools.Measures.Survey;

/// <summary>What one row of alpha says, as bits: most rows are clear or solid over long runs, and 64 of their pixels then cost as much as one.</summary>
internal sealed class AlphaRow
{
    private readonly byte[] tail = new byte[WordBits.WordLength];
    private ulong[] painted = [];
    private ulong[] seen = [];
    private ulong[] covering = [];
    private ulong[] solid = [];
    private int begin;
    private int end;

    /// <summary>The pixel that bit 0 of the words stands for, a multiple of 64; all before it are clear.</summary>
    public int First => begin * WordBits.WordLength;

    /// <summary>Whether all pixels are clear.</summary>
    public bool IsClear => begin == end;

    /// <summary>Pixels above 0.</summary>
    public ReadOnlySpan<ulong> Painted => painted.AsSpan(begin, end - begin);

    /// <summary>Pixels above <see cref="PartSurvey.Faint"/>.</summary>
    public ReadOnlySpan<ulong> Seen => seen.AsSpan(begin, end - begin);

    /// <summary>Pixels of <see cref="PartSurvey.Covering"/> and more.</summary>
    public ReadOnlySpan<ulong> Covering => covering.AsSpan(begin, end - begin);

    /// <summary>Pixels of <see cref="PartSurvey.Solid"/> and more.</summary>
    public ReadOnlySpan<ulong> Solid => solid.AsSpan(begin, end - begin);

    /// <summary>The sum of all alpha.</summary>
    public long Weight { get; private set; }

    /// <summary>The sum of alpha times the pixel's number.</summary>
    public long Moment { get; private set; }

    public void Read(ReadOnlySpan<byte> alpha)
    {
        var words = WordBits.GetWordCount(alpha.Length);
        if (painted.Length < words) (painted, seen, covering, solid) = (new ulong[words], new ulong[words], new ulong[words], new ulong[words]);
        (begin, end, Weight, Moment) = (0, 0, 0, 0);
        var whole = alpha.Length / WordBits.WordLength;
        for (var word = 0; word < whole; word++) ReadWord(alpha.Slice(word * WordBits.WordLength, WordBits.WordLength), word);
        if (whole == words) return;
        Array.Clear(tail, 0, tail.Length);
        alpha.Slice(whole * WordBits.WordLength).CopyTo(tail);
        ReadWord(tail, whole);
    }

    private void Keep(int word, ulong isPainted, ulong isSeen, ulong isCovering, ulong isSolid)
    {
        if (begin == end) begin = word;
        else for (; end < word; end++) painted[end] = seen[end] = covering[end] = solid[end] = 0;
        end = word + 1;
        painted[word] = isPainted;
        seen[word] = isSeen;
        covering[word] = isCovering;
        solid[word] = isSolid;
    }

    private void KeepSolid(int word)
    {
        const int Pixels = WordBits.WordLength;
        Keep(word, ulong.MaxValue, ulong.MaxValue, ulong.MaxValue, ulong.MaxValue);
        Weight += byte.MaxValue * Pixels;
        Moment += byte.MaxValue * (((long)word * Pixels * Pixels) + (Pixels * (Pixels - 1) / 2));
    }

#if NET8_0_OR_GREATER
    private static readonly Vector128<ushort> lowPlaces = Vector128.Create((ushort)0, 1, 2, 3, 4, 5, 6, 7);
    private static readonly Vector128<ushort> highPlaces = Vector128.Create((ushort)8, 9, 10, 11, 12, 13, 14, 15);

    private void ReadWord(ReadOnlySpan<byte> alpha, int word)
    {
        ref var start = ref MemoryMarshal.GetReference(alpha);
        var first = Vector128.LoadUnsafe(ref start);
        var second = Vector128.LoadUnsafe(ref start, 16);
        var third = Vector128.LoadUnsafe(ref start, 32);
        var fourth = Vector128.LoadUnsafe(ref start, 48);
        if (((first | second) | (third | fourth)) == Vector128<byte>.Zero) return;
        if (((first & second) & (third & fourth)) == Vector128<byte>.AllBitsSet)
        {
            KeepSolid(word);
            return;
        }

        Keep(
            word,
            Join(AtLeast(first, 1), AtLeast(second, 1), AtLeast(third, 1), AtLeast(fourth, 1)),
            Join(AtLeast(first, PartSurvey.Faint + 1), AtLeast(second, PartSurvey.Faint + 1), AtLeast(third, PartSurvey.Faint + 1), AtLeast(fourth, PartSurvey.Faint + 1)),
            Join(AtLeast(first, PartSurvey.Covering), AtLeast(second, PartSurvey.Covering), AtLeast(third, PartSurvey.Covering), AtLeast(fourth, PartSurvey.Covering)),
            Join(AtLeast(first, PartSurvey.Solid), AtLeast(second, PartSurvey.Solid), AtLeast(third, PartSurvey.Solid), AtLeast(fourth, PartSurvey.Solid)));
        var pixel = (long)word * WordBits.WordLength;
        Weigh(first, pixel);
        Weigh(second, pixel + 16);
        Weigh(third, pixel + 32);
        Weigh(fourth, pixel + 48);
    }

    private static Vector128<byte> AtLeast(Vector128<byte> alpha, byte least) => Vector128.Equals(Vector128.Max(alpha, Vector128.Create(least)), alpha);

    private static ulong Join(Vector128<byte> first, Vector128<byte> second, Vector128<byte> third, Vector128<byte> fourth) =>
        first.ExtractMostSignificantBits() | ((ulong)second.ExtractMostSignificantBits() << 16) | ((ulong)third.ExtractMostSignificantBits() << 32) | ((ulong)fourth.ExtractMostSignificantBits() << 48);

    /// <summary>16 bits are enough for both sums of 16 pixels: 16 · 255, and 120 · 255.</summary>
    private void Weigh(Vector128<byte> alpha, long pixel)
    {
        var (low, high) = Vector128.Widen(alpha);
        var weight = Vector128.Sum(low + high);
        Weight += weight;
        Moment += (pixel * weight) + Vector128.Sum((low * lowPlaces) + (high * highPlaces));
    }
#else
    private void ReadWord(ReadOnlySpan<byte> alpha, int word)
    {
        var (any, all) = (0UL, ulong.MaxValue);
        foreach (var eight in MemoryMarshal.Cast<byte, ulong>(alpha))
        {
            any |= eight;
            all &= eight;
        }

        if (any == 0) return;
        if (all == ulong.MaxValue)
        {
            KeepSolid(word);
            return;
        }

        var (isPainted, isSeen, isCovering, isSolid) = (0UL, 0UL, 0UL, 0UL);
        for (var i = 0; i < alpha.Length; i++)
        {
            var value = alpha[i];
            if (value == 0) continue;
            var bit = 1UL << i;
            isPainted |= bit;
            if (value > PartSurvey.Faint) isSeen |= bit;
            if (value >= PartSurvey.Covering) isCovering |= bit;
            if (value >= PartSurvey.Solid) isSolid |= bit;
            Weight += value;
            Moment += value * (((long)word * WordBits.WordLength) + i);
        }

        Keep(word, isPainted, isSeen, isCovering, isSolid);
    }
#endif
}
