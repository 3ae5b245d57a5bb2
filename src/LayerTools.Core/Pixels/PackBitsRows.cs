using System.Buffers.Binary;
using LayerTools.Errors;
using LayerTools.Model;

namespace LayerTools.Pixels;

/// <summary>Rows packed one by one, behind a table of their packed lengths: 2 bytes a row in PSD, 4 in PSB.</summary>
internal sealed class PackBitsRows : PlaneRows
{
    /// <summary>The most that packing can cost: each byte as a stretch of its own.</summary>
    private const int WastefulBytesPerByte = 2;

    private readonly int[] packedLengths;
    private readonly SourceWindow window;
    private readonly PlanePlace place;

    public PackBitsRows(ByteSource data, int width, int height, int bitDepth, FileFormat format, OpenedSources opened, PlanePlace place)
        : base(width, height, bitDepth)
    {
        this.place = place;
        var countBytes = GetCountBytes(format);
        var tableBytes = (long)height * countBytes;
        if (data.Length < tableBytes) throw place.Damaged(data.Length, "The table of packed row lengths is cut short.");
        packedLengths = new int[height];
        window = new SourceWindow(data, opened, 0);
        try
        {
            var left = data.Length - tableBytes;
            var longest = WastefulBytesPerByte * ((long)RowBytes + 1);
            for (var y = 0; y < height; y++)
            {
                var entry = window.Take(countBytes);
                long length = countBytes == 2 ? BinaryPrimitives.ReadUInt16BigEndian(entry) : BinaryPrimitives.ReadUInt32BigEndian(entry);
                if (length > longest) throw place.Damaged((long)y * countBytes, FormattableString.Invariant($"Row {y} says {length} packed bytes, more than any row of {width} samples takes."));
                if (length > left) throw place.Damaged((long)y * countBytes, FormattableString.Invariant($"Row {y} says {length} packed bytes where {left} are left."));
                left -= length;
                packedLengths[y] = (int)length;
            }
        }
        catch
        {
            window.Dispose();
            throw;
        }
    }

    /// <summary>Bytes of one entry in the table of packed row lengths.</summary>
    public static int GetCountBytes(FileFormat format) => format == FileFormat.Psb ? 4 : 2;

    /// <summary>Most packed bytes of a row.</summary>
    public int LongestPackedRow => packedLengths.Max();

    /// <summary>Turns the next row end for end without unpacking it; for 8-bit samples.</summary>
    /// <param name="flipped">At least <see cref="LongestPackedRow"/> bytes.</param>
    /// <returns>Bytes written.</returns>
    public int ReadFlipped(Span<byte> flipped)
    {
        var start = window.Position;
        var y = TakeRow();
        var packed = window.Take(packedLengths[y]);
        if (PackBits.TryFlip(packed, RowBytes, flipped, out var length) is { } problem) throw Damaged(start, y, problem);
        if (length < packed.Length) flipped.Slice(packed.Length - length, length).CopyTo(flipped);
        return length;
    }

    public override void Dispose() => window.Dispose();

    protected override void ReadNext(Span<byte> samples)
    {
        var start = window.Position;
        if (PackBits.TryDecode(window.Take(packedLengths[NextRow]), samples) is { } problem) throw Damaged(start, NextRow, problem);
    }

    protected override void SkipNext(int first, int count)
    {
        var packed = 0L;
        for (var y = first; y < first + count; y++) packed += packedLengths[y];
        window.Skip(packed);
    }

    private LayeredFileException Damaged(long start, int row, string problem) => place.Damaged(start, FormattableString.Invariant($"Row {row}: {problem}"));
}
