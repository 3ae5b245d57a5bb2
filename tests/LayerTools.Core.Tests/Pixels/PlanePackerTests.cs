using System.Buffers.Binary;
using CsCheck;
using LayerTools.Model;
using LayerTools.Pixels;
using Xunit;

namespace LayerTools.Tests.Pixels;

public class PlanePackerTests
{
    public static TheoryData<Compression, int, FileFormat> Ways()
    {
        var ways = new TheoryData<Compression, int, FileFormat>();
        foreach (var compression in new[] { Compression.Raw, Compression.PackBits, Compression.Zip, Compression.ZipPrediction })
        {
            foreach (var bitDepth in new[] { 1, 8, 16, 32 })
            {
                foreach (var format in new[] { FileFormat.Psd, FileFormat.Psb }) ways.Add(compression, bitDepth, format);
            }
        }

        return ways;
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void What_is_packed_unpacks(Compression compression, int bitDepth, FileFormat format) =>
        Gen.Select(Gen.Int[0, 40], Gen.Int[0, 12]).SelectMany(size => Gen.Byte[0, 3].Array[PlaneRows.GetRowBytes(size.Item1, bitDepth) * size.Item2].Select(samples => (size, samples))).Sample(sample =>
        {
            var ((width, height), samples) = sample;
            var plane = PlanePacker.Pack(PlaneRole.Color1, compression, width, height, bitDepth, format, samples, new SpoolFile());
            return plane.Role == PlaneRole.Color1 && ReadAll(plane, width, height, bitDepth, format).AsSpan().SequenceEqual(samples);
        }, iter: 30);

    [Theory]
    [InlineData(FileFormat.Psd, 2)]
    [InlineData(FileFormat.Psb, 4)]
    public void The_table_of_row_lengths_is_as_wide_as_the_format_says(FileFormat format, int countBytes)
    {
        var plane = PlanePacker.Pack(PlaneRole.Alpha, Compression.PackBits, 10, 3, 8, format, new byte[30], new SpoolFile());
        using var opened = new OpenedSources();
        var data = plane.Data.ReadAll(opened);
        Assert.Equal((3 * countBytes) + (3 * 2), data.Length);
        Assert.Equal(2, countBytes == 2 ? BinaryPrimitives.ReadUInt16BigEndian(data) : BinaryPrimitives.ReadInt32BigEndian(data));
    }

    [Fact]
    public void A_channel_larger_than_a_piece_comes_back_whole()
    {
        const int width = 3000, height = 2500;
        var random = new Random(5);
        var samples = new byte[width * height];
        random.NextBytes(samples);
        foreach (var compression in new[] { Compression.Raw, Compression.PackBits, Compression.ZipPrediction })
        {
            var plane = PlanePacker.Pack(PlaneRole.Color0, compression, width, height, 8, FileFormat.Psd, samples, new SpoolFile());
            Assert.True(samples.AsSpan().SequenceEqual(ReadAll(plane, width, height, 8, FileFormat.Psd)), compression.ToString());
        }
    }

    [Fact]
    public void Rows_that_may_not_fit_the_table_of_a_PSD_are_packed_otherwise()
    {
        var samples = new byte[4 * 17_000];
        new Random(1).NextBytes(samples);
        Assert.Equal((int)Compression.PackBits, PlanePacker.Pack(PlaneRole.Color0, Compression.PackBits, 17_000, 1, 32, FileFormat.Psb, samples, new SpoolFile()).CompressionWord);
        var plane = PlanePacker.Pack(PlaneRole.Color0, Compression.PackBits, 17_000, 1, 32, FileFormat.Psd, samples, new SpoolFile());
        Assert.Equal((int)Compression.ZipPrediction, plane.CompressionWord);
        Assert.Equal(samples, ReadAll(plane, 17_000, 1, 32, FileFormat.Psd));
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void Skipped_rows_are_not_missed(Compression compression, int bitDepth, FileFormat format)
    {
        const int width = 21, height = 9;
        var rowBytes = PlaneRows.GetRowBytes(width, bitDepth);
        var samples = Enumerable.Range(0, rowBytes * height).Select(i => (byte)(i / 3)).ToArray();
        var plane = PlanePacker.Pack(PlaneRole.Color0, compression, width, height, bitDepth, format, samples, new SpoolFile());
        using var opened = new OpenedSources();
        using var rows = PlaneRows.Open(plane, Bounds.FromSize(0, 0, width, height), bitDepth, format, 0, opened, new PlanePlace(null, "test", -1));
        var row = new byte[rowBytes];
        rows.ReadRow(row);
        rows.SkipRows(4);
        rows.ReadRow(row);
        Assert.Equal(samples.AsSpan(5 * rowBytes, rowBytes).ToArray(), row);
        rows.SkipRows(3);
        Assert.Throws<InvalidOperationException>(() => rows.ReadRow(row));
    }

    internal static byte[] ReadAll(Plane plane, int width, int height, int bitDepth, FileFormat format)
    {
        using var opened = new OpenedSources();
        using var rows = PlaneRows.Open(plane, Bounds.FromSize(5, -3, width, height), bitDepth, format, 0, opened, new PlanePlace(null, "test", -1));
        var samples = new byte[rows.RowBytes * rows.Height];
        for (var y = 0; y < rows.Height; y++) rows.ReadRow(samples.AsSpan(y * rows.RowBytes, rows.RowBytes));
        return samples;
    }
}
