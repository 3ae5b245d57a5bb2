#if NET8_0_OR_GREATER
using System.Numerics;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
#endif
using LayerTools.Errors;

namespace LayerTools.Pixels;

/// <summary>
/// PackBits, one row at a time (Apple Technical Note TN1023; TIFF 6.0, section 9): a header byte n, then for 0 to 127
/// n + 1 bytes as they are, for −1 to −127 one byte that is repeated 1 − n times; −128 means nothing.
/// </summary>
internal static class PackBits
{
    private const byte NoOperation = 0x80;
    private const int LongestRun = 128;

    private const string CutPlain = "A packed row ends inside a stretch of plain bytes.";
    private const string CutRun = "A packed row ends inside a run.";

    /// <summary>The shortest run that is worth breaking a stretch of plain bytes for.</summary>
    private const int WorthwhileRun = 3;

    /// <summary>Most bytes that <see cref="Encode"/> writes for a row.</summary>
    public static int GetMaxPackedLength(int rowBytes) => checked(rowBytes + ((rowBytes + LongestRun - 1) / LongestRun));

    /// <summary>Unpacks one row.</summary>
    /// <exception cref="LayeredFileException">The packed bytes make a shorter or a longer row.</exception>
    public static void Decode(ReadOnlySpan<byte> packed, Span<byte> row)
    {
        if (TryDecode(packed, row) is { } problem)
        {
            throw new LayeredFileException(LayeredFileErrorKind.Damaged, null, "packed row", -1, problem, "Restore the file from a backup.");
        }
    }

    /// <summary>Unpacks one row; tells what is wrong with it as a sentence, or null if it came out whole.</summary>
    public static string? TryDecode(ReadOnlySpan<byte> packed, Span<byte> row)
    {
        var expected = row.Length;
        while (!packed.IsEmpty)
        {
            var header = packed[0];
            if (header < NoOperation)
            {
                var count = header + 1;
                if (count >= packed.Length) return CutPlain;
                if (count > row.Length) return Overlong(expected);
                packed.Slice(1, count).CopyTo(row);
                packed = packed.Slice(count + 1);
                row = row.Slice(count);
            }
            else if (header > NoOperation)
            {
                var count = 257 - header;
                if (packed.Length < 2) return CutRun;
                if (count > row.Length) return Overlong(expected);
                row.Slice(0, count).Fill(packed[1]);
                packed = packed.Slice(2);
                row = row.Slice(count);
            }
            else
            {
                packed = packed.Slice(1);
            }
        }

        return row.IsEmpty ? null : Short(expected - row.Length, expected);
    }

    /// <summary>Packs one row.</summary>
    /// <param name="row">The samples.</param>
    /// <param name="packed">At least <see cref="GetMaxPackedLength"/> bytes.</param>
    /// <returns>Bytes written.</returns>
    public static int Encode(ReadOnlySpan<byte> row, Span<byte> packed)
    {
        var written = 0;
        while (!row.IsEmpty)
        {
            var run = CountRun(row);
            if (run == 1)
            {
                var plain = FindRun(row);
                written += EncodePlain(row.Slice(0, plain), packed.Slice(written));
                row = row.Slice(plain);
                continue;
            }

            // A last single byte of a long run is cheaper as the start of the plain bytes that follow.
            for (; run > 1; run -= Math.Min(run, LongestRun))
            {
                var count = Math.Min(run, LongestRun);
                packed[written] = (byte)(257 - count);
                packed[written + 1] = row[0];
                written += 2;
                row = row.Slice(count);
            }
        }

        return written;
    }

    /// <summary>
    /// Turns a packed row of 8-bit samples end for end without unpacking it: its runs change places, and so do the bytes of each plain stretch.
    /// Tells what is wrong with the row as a sentence, or null if it is sound.
    /// </summary>
    /// <param name="packed">The row.</param>
    /// <param name="rowBytes">How many bytes it must unpack to.</param>
    /// <param name="flipped">As long as <paramref name="packed"/>; the flipped row stands at its end.</param>
    /// <param name="length">Bytes of the flipped row; fewer than before if there were headers that mean nothing.</param>
    public static string? TryFlip(ReadOnlySpan<byte> packed, int rowBytes, Span<byte> flipped, out int length)
    {
        var missing = rowBytes;
        var start = packed.Length;
        length = 0;
        for (var i = 0; i < packed.Length;)
        {
            var header = packed[i];
            if (header == NoOperation)
            {
                i++;
                continue;
            }

            var isPlain = header < NoOperation;
            var count = isPlain ? header + 1 : 257 - header;
            var stored = isPlain ? count + 1 : 2;
            if (stored > packed.Length - i) return isPlain ? CutPlain : CutRun;
            if (count > missing) return Overlong(rowBytes);
            start -= stored;
            packed.Slice(i, stored).CopyTo(flipped.Slice(start));
            if (isPlain) flipped.Slice(start + 1, count).Reverse();
            missing -= count;
            i += stored;
        }

        length = packed.Length - start;
        return missing == 0 ? null : Short(rowBytes - missing, rowBytes);
    }

    private static string Short(int held, int expected) => FormattableString.Invariant($"A packed row holds {held} bytes where {expected} are needed.");

    private static string Overlong(int expected) => FormattableString.Invariant($"A packed row holds more than the {expected} bytes that are needed.");

    private static int EncodePlain(ReadOnlySpan<byte> plain, Span<byte> packed)
    {
        var written = 0;
        while (!plain.IsEmpty)
        {
            var count = Math.Min(plain.Length, LongestRun);
            packed[written] = (byte)(count - 1);
            plain.Slice(0, count).CopyTo(packed.Slice(written + 1));
            written += count + 1;
            plain = plain.Slice(count);
        }

        return written;
    }

    /// <summary>How often the first byte stands at the start.</summary>
    private static int CountRun(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length < 2 || bytes[1] != bytes[0]) return 1;
#if NET8_0_OR_GREATER
        var end = bytes.IndexOfAnyExcept(bytes[0]);
        return end < 0 ? bytes.Length : end;
#else
        var count = 2;
        while (count < bytes.Length && bytes[count] == bytes[0]) count++;
        return count;
#endif
    }

    /// <summary>Where the first worthwhile run begins; the length if there is none.</summary>
    private static int FindRun(ReadOnlySpan<byte> bytes)
    {
        var i = 0;
#if NET8_0_OR_GREATER
        if (Vector128.IsHardwareAccelerated)
        {
            ref var start = ref MemoryMarshal.GetReference(bytes);
            for (; i <= bytes.Length - Vector128<byte>.Count - (WorthwhileRun - 1); i += Vector128<byte>.Count)
            {
                var middle = Vector128.LoadUnsafe(ref start, (nuint)i + 1);
                var equal = Vector128.Equals(Vector128.LoadUnsafe(ref start, (nuint)i), middle) & Vector128.Equals(middle, Vector128.LoadUnsafe(ref start, (nuint)i + 2));
                if (equal != Vector128<byte>.Zero) return i + BitOperations.TrailingZeroCount(equal.ExtractMostSignificantBits());
            }
        }
#endif
        for (; i <= bytes.Length - WorthwhileRun; i++)
        {
            if (bytes[i] == bytes[i + 1] && bytes[i] == bytes[i + 2]) return i;
        }

        return bytes.Length;
    }
}
