using System.Buffers.Binary;
using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>Paths as records of 26 bytes whose points are fractions of the canvas in 8.24 fixed point, y before x (PSD File Formats Specification, 'Path resource format').</summary>
internal static class PathRecords
{
    private const int RecordLength = 26;
    private const long One = 1 << 24;
    private const int ClipboardRecord = 7;
    private const int InitialFillRecord = 8;
    private const int ClosedRecord = 0;
    private const int OpenRecord = 3;
    private static readonly ushort[] KnotRecords = [1, 2, 4, 5];

    /// <summary>Reflects anchors and handles across the line at half of <paramref name="doubledAxis"/> px; exact for the centre line.</summary>
    public static byte[] Reflect(ReadOnlySpan<byte> data, int start, int doubledAxis, int canvasWidth)
    {
        var sum = DivideRounded(doubledAxis * One, canvasWidth);
        return Map(data, start, x => sum - x, y => y, swapsEdges: true);
    }

    /// <summary>Moves points by whole pixels and refers them to a new canvas size.</summary>
    public static byte[] Recanvas(ReadOnlySpan<byte> data, int start, int right, int down, int oldWidth, int oldHeight, int newWidth, int newHeight) => Map(
        data,
        start,
        x => DivideRounded(x * oldWidth + right * One, newWidth),
        y => DivideRounded(y * oldHeight + down * One, newHeight),
        swapsEdges: false);

    /// <summary>
    /// Reads outlines. A record that begins one: type 2 (0 closed, 3 open), count of knots 2, operation 2 (0 exclude, 1 unite, 2 subtract, 3 intersect, else a part
    /// of the shape before). Counts that promise more knots than follow are not believed.
    /// </summary>
    public static IReadOnlyList<PathOutline> ReadOutlines(ReadOnlySpan<byte> data, int start, out bool isFilledWhenEmpty)
    {
        isFilledWhenEmpty = false;
        var outlines = new List<PathOutline>();
        var knots = new List<PathKnot>();
        for (; start + RecordLength <= data.Length; start += RecordLength)
        {
            var record = data.Slice(start, RecordLength);
            var type = BinaryPrimitives.ReadUInt16BigEndian(record);
            if (type == InitialFillRecord) isFilledWhenEmpty = BinaryPrimitives.ReadUInt16BigEndian(record.Slice(2)) != 0;
            if (type is ClosedRecord or OpenRecord)
            {
                knots = [];
                var operation = BinaryPrimitives.ReadInt16BigEndian(record.Slice(4));
                outlines.Add(new PathOutline(operation is >= 0 and <= 3 ? (PathOperation)operation : null, knots, type == ClosedRecord));
            }
            else if (Array.IndexOf(KnotRecords, type) >= 0)
            {
                knots.Add(new PathKnot(ReadFraction(record, 6), ReadFraction(record, 2), ReadFraction(record, 14), ReadFraction(record, 10), ReadFraction(record, 22), ReadFraction(record, 18)));
            }
        }

        outlines.RemoveAll(outline => outline.Knots.Count == 0);
        return outlines;
    }

    private static double ReadFraction(ReadOnlySpan<byte> record, int at) => BinaryPrimitives.ReadInt32BigEndian(record.Slice(at)) / (double)One;

    private static byte[] Map(ReadOnlySpan<byte> data, int start, Func<long, long> mapX, Func<long, long> mapY, bool swapsEdges)
    {
        var mapped = data.ToArray();
        for (; start + RecordLength <= mapped.Length; start += RecordLength)
        {
            var record = mapped.AsSpan(start, RecordLength);
            var type = BinaryPrimitives.ReadUInt16BigEndian(record);
            if (Array.IndexOf(KnotRecords, type) >= 0)
            {
                for (var point = 2; point < RecordLength; point += 8)
                {
                    Replace(record.Slice(point), mapY);
                    Replace(record.Slice(point + 4), mapX);
                }
            }
            else if (type == ClipboardRecord)
            {
                // top 4, left 4, bottom 4, right 4, resolution 4
                Replace(record.Slice(2), mapY);
                Replace(record.Slice(6), mapX);
                Replace(record.Slice(10), mapY);
                Replace(record.Slice(14), mapX);
                if (swapsEdges) SwapInt32(record.Slice(6), record.Slice(14));
            }
        }

        return mapped;
    }

    private static void Replace(Span<byte> place, Func<long, long> map)
    {
        var value = map(BinaryPrimitives.ReadInt32BigEndian(place));
        BinaryPrimitives.WriteInt32BigEndian(place, (int)Math.Max(int.MinValue, Math.Min(int.MaxValue, value)));
    }

    private static void SwapInt32(Span<byte> one, Span<byte> other)
    {
        var kept = BinaryPrimitives.ReadInt32BigEndian(one);
        other.Slice(0, 4).CopyTo(one);
        BinaryPrimitives.WriteInt32BigEndian(other, kept);
    }

    private static long DivideRounded(long dividend, long divisor) => (long)Math.Round((decimal)dividend / divisor, MidpointRounding.AwayFromZero);
}
