using System.Buffers.Binary;

namespace LayerTools.Pixels;

/// <summary>
/// The differences that <see cref="Compression.ZipPrediction"/> stores, row by row: at 8 bits from byte to byte, at 16 from
/// big-endian word to word; at 32 the row's bytes are first sorted by their place in the sample, the highest of all samples
/// first, and then stored as differences from byte to byte.
/// </summary>
internal static class Prediction
{
    /// <summary>Turns a row of differences into samples.</summary>
    /// <param name="row">One row, exactly its samples.</param>
    /// <param name="bitDepth">8, 16 or 32.</param>
    /// <param name="scratch">As long as the row; used at 32 bits.</param>
    public static void Undo(Span<byte> row, int bitDepth, Span<byte> scratch)
    {
        switch (bitDepth)
        {
            case 8:
                AddBytes(row);
                break;
            case 16:
                AddWords(row);
                break;
            case 32:
                AddBytes(row);
                row.CopyTo(scratch);
                JoinBytes(scratch.Slice(0, row.Length), row);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(bitDepth));
        }
    }

    /// <summary>Turns a row of samples into differences.</summary>
    /// <param name="row">One row, exactly its samples.</param>
    /// <param name="bitDepth">8, 16 or 32.</param>
    /// <param name="scratch">As long as the row; used at 32 bits.</param>
    public static void Apply(Span<byte> row, int bitDepth, Span<byte> scratch)
    {
        switch (bitDepth)
        {
            case 8:
                SubtractBytes(row);
                break;
            case 16:
                SubtractWords(row);
                break;
            case 32:
                row.CopyTo(scratch);
                SplitBytes(scratch.Slice(0, row.Length), row);
                SubtractBytes(row);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(bitDepth));
        }
    }

    private static void AddBytes(Span<byte> row)
    {
        byte sum = 0;
        foreach (ref var value in row)
        {
            sum += value;
            value = sum;
        }
    }

    private static void SubtractBytes(Span<byte> row)
    {
        for (var i = row.Length - 1; i > 0; i--) row[i] -= row[i - 1];
    }

    private static void AddWords(Span<byte> row)
    {
        ushort sum = 0;
        for (var i = 0; i + 1 < row.Length; i += 2)
        {
            var sample = row.Slice(i, 2);
            sum += BinaryPrimitives.ReadUInt16BigEndian(sample);
            BinaryPrimitives.WriteUInt16BigEndian(sample, sum);
        }
    }

    private static void SubtractWords(Span<byte> row)
    {
        ushort before = 0;
        for (var i = 0; i + 1 < row.Length; i += 2)
        {
            var sample = row.Slice(i, 2);
            var value = BinaryPrimitives.ReadUInt16BigEndian(sample);
            BinaryPrimitives.WriteUInt16BigEndian(sample, (ushort)(value - before));
            before = value;
        }
    }

    private static void JoinBytes(ReadOnlySpan<byte> planes, Span<byte> samples)
    {
        var width = samples.Length / 4;
        for (var place = 0; place < 4; place++)
        {
            var plane = planes.Slice(place * width, width);
            for (var x = 0; x < plane.Length; x++) samples[(4 * x) + place] = plane[x];
        }
    }

    private static void SplitBytes(ReadOnlySpan<byte> samples, Span<byte> planes)
    {
        var width = samples.Length / 4;
        for (var place = 0; place < 4; place++)
        {
            var plane = planes.Slice(place * width, width);
            for (var x = 0; x < plane.Length; x++) plane[x] = samples[(4 * x) + place];
        }
    }
}
