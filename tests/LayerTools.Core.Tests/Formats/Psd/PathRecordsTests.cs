using System.Buffers.Binary;
using LayerTools.Formats.Psd;
using LayerTools.Model;
using Xunit;

namespace LayerTools.Tests.Formats.Psd;

/// <summary>Records made by hand after the published format specification, 'Path resource format'.</summary>
public class PathRecordsTests
{
    [Fact]
    public void Outlines_have_their_operation_and_their_knots()
    {
        var outlines = PathRecords.ReadOutlines([.. FillRule(), .. Initial(0), .. Outline(0, 2, 1), .. Knot(1, 0.25, 0.5), .. Knot(2, 0.75, 1), .. Outline(0, 1, -1), .. Knot(1, 0, 0), .. Outline(3, 1, 2), .. Knot(4, 2, -3)], 0, out var isFilled);

        Assert.False(isFilled);
        Assert.Equal([PathOperation.Unite, null, PathOperation.Subtract], outlines.Select(outline => outline.Operation));
        Assert.Equal([true, true, false], outlines.Select(outline => outline.IsClosed));
        Assert.Equal([new PathKnot(0.125, 0.25, 0.25, 0.5, 0.375, 0.75), new PathKnot(0.625, 0.75, 0.75, 1, 0.875, 1.25)], outlines[0].Knots);
        Assert.Equal((2, -3), (outlines[2].Knots[0].X, outlines[2].Knots[0].Y));
    }

    [Fact]
    public void A_path_without_outlines_says_what_it_fills()
    {
        Assert.Empty(PathRecords.ReadOutlines([.. FillRule(), .. Initial(1)], 0, out var isFilled));
        Assert.True(isFilled);
    }

    [Fact]
    public void Outlines_without_knots_and_pieces_of_records_are_left_out()
    {
        Assert.Empty(PathRecords.ReadOutlines([.. Outline(0, 500, 1), .. Outline(0, 0, 1), 0, 1, 2], 0, out _));
        Assert.Single(PathRecords.ReadOutlines([.. Outline(0, 65535, 1), .. Knot(1, 0, 0)], 0, out _));
        Assert.Empty(PathRecords.ReadOutlines([], 8, out _));
    }

    private static byte[] FillRule() => Record(6);

    private static byte[] Initial(short value) => Record(8, value);

    private static byte[] Outline(short type, int count, short operation) => Record(type, (short)count, operation);

    private static byte[] Record(params short[] values)
    {
        var record = new byte[26];
        for (var i = 0; i < values.Length; i++) BinaryPrimitives.WriteInt16BigEndian(record.AsSpan(2 * i), values[i]);
        return record;
    }

    /// <summary>The handles lie an eighth to the left and up of the anchor's place, and as far to the right and down; y is twice as far.</summary>
    private static byte[] Knot(short type, double x, double y)
    {
        var record = Record(type);
        double[] values = [y - 0.25, x - 0.125, y, x, y + 0.25, x + 0.125];
        for (var i = 0; i < values.Length; i++) BinaryPrimitives.WriteInt32BigEndian(record.AsSpan(2 + (4 * i)), (int)(values[i] * (1 << 24)));
        return record;
    }
}
