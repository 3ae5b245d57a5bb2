using CsCheck;
using LayerTools.Pixels;
using Xunit;

namespace LayerTools.Tests.Pixels;

public class FlipTests
{
    [Theory]
    [InlineData(8, 3, "010203", "030201")]
    [InlineData(16, 2, "01020304", "03040102")]
    [InlineData(32, 2, "0102030405060708", "0506070801020304")]
    [InlineData(1, 8, "D0", "0B")]
    [InlineData(1, 3, "C0", "60")]
    [InlineData(1, 9, "8080", "8080")]
    [InlineData(1, 10, "8000", "0040")]
    public void Samples_change_places_whole(int bitDepth, int width, string row, string expected)
    {
        var bytes = Convert.FromHexString(row);
        Flip.Row(bytes, width, bitDepth);
        Assert.Equal(expected, Convert.ToHexString(bytes));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(8)]
    [InlineData(16)]
    [InlineData(32)]
    public void Flipped_twice_is_the_same(int bitDepth) => Gen.Int[0, 70].SelectMany(width => Gen.Byte.Array[PlaneRows.GetRowBytes(width, bitDepth)].Select(row => (width, row))).Sample(sample =>
    {
        var (width, row) = sample;
        if (bitDepth == 1 && width % 8 != 0) row[^1] &= (byte)(0xFF << (8 - (width % 8)));
        var flipped = row.ToArray();
        Flip.Row(flipped, width, bitDepth);
        Flip.Row(flipped, width, bitDepth);
        return flipped.AsSpan().SequenceEqual(row);
    });
}
