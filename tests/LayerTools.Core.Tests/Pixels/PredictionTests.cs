using CsCheck;
using LayerTools.Pixels;
using Xunit;

namespace LayerTools.Tests.Pixels;

public class PredictionTests
{
    // Worked by hand.
    [Theory]
    [InlineData(8, "0A0C0B0B", "0A02FF00", "10, 12, 11, 11: then 2 more, 1 less, the same")]
    [InlineData(8, "FF01", "FF02", "255 to 1 is 2 more, around the corner")]
    [InlineData(16, "010002000200", "010001000000", "256, 512, 512")]
    [InlineData(16, "00FF0100", "00FF0001", "255 to 256: the carry crosses the byte")]
    [InlineData(16, "00010000", "0001FFFF", "1 to 0")]
    [InlineData(32, "3F8000003F800000", "3F00410080000000", "1.0, 1.0: bytes 3F 3F, 80 80, 00 00, 00 00, then differences")]
    public void Rows_worked_by_hand(int bitDepth, string samples, string differences, string reason)
    {
        var row = Convert.FromHexString(samples);
        Prediction.Apply(row, bitDepth, new byte[row.Length]);
        Assert.True(differences == Convert.ToHexString(row), reason);
        Prediction.Undo(row, bitDepth, new byte[row.Length]);
        Assert.Equal(samples, Convert.ToHexString(row));
    }

    [Theory]
    [InlineData(8)]
    [InlineData(16)]
    [InlineData(32)]
    public void Undoing_is_the_inverse(int bitDepth) => Gen.Byte.Array[0, 100].Sample(bytes =>
    {
        var samples = bytes.AsSpan(0, bytes.Length / 4 * 4).ToArray();
        var row = samples.ToArray();
        Prediction.Apply(row, bitDepth, new byte[row.Length]);
        Prediction.Undo(row, bitDepth, new byte[row.Length]);
        return row.AsSpan().SequenceEqual(samples);
    });
}
