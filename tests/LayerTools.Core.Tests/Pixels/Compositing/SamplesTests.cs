using System.Buffers.Binary;
using LayerTools.Pixels.Compositing;
using Xunit;

namespace LayerTools.Tests.Pixels.Compositing;

public class SamplesTests
{
    [Fact]
    public void Every_byte_comes_back_and_the_ends_are_exact()
    {
        var stored = Enumerable.Range(0, 256).Select(value => (byte)value).ToArray();
        var samples = new float[256];

        Samples.Decode(stored, 8, samples);
        var again = new byte[256];
        Samples.Encode(samples, 8, again);

        Assert.Equal(stored, again);
        Assert.Equal(0f, samples[0]);
        Assert.Equal(1f, samples[255]);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(31)]
    [InlineData(33)]
    public void Bytes_are_decoded_alike_in_vectors_and_in_the_rest(int count)
    {
        var stored = Enumerable.Range(0, count).Select(i => (byte)(i * 37)).ToArray();
        var samples = new float[count];

        Samples.Decode(stored, 8, samples);

        Assert.Equal(stored.Select(value => value * (1f / 255)), samples);
    }

    [Fact]
    public void Every_word_comes_back_and_the_ends_are_exact()
    {
        var stored = new byte[2 * 65536];
        for (var value = 0; value < 65536; value++) BinaryPrimitives.WriteUInt16BigEndian(stored.AsSpan(2 * value), (ushort)value);
        var samples = new float[65536];

        Samples.Decode(stored, 16, samples);
        var again = new byte[stored.Length];
        Samples.Encode(samples, 16, again);

        Assert.Equal(stored, again);
        Assert.Equal(1f, samples[65535]);
    }

    [Theory]
    [InlineData(0f, 0f)]
    [InlineData(0.18f, 0.18f)]
    [InlineData(-0.5f, -0.5f)]
    [InlineData(7.5f, 7.5f)]
    [InlineData(float.NaN, 0f)]
    [InlineData(float.PositiveInfinity, 0f)]
    public void Floats_keep_their_open_range_but_must_be_numbers(float value, float expected)
    {
        var stored = new byte[4];
        BinaryPrimitives.WriteSingleBigEndian(stored, value);
        var samples = new float[1];

        Samples.Decode(stored, 32, samples);
        Samples.Encode(samples, 32, stored);

        Assert.Equal(expected, samples[0]);
        Assert.Equal(expected, BinaryPrimitives.ReadSingleBigEndian(stored));
    }

    [Theory]
    [InlineData(-0.1f, 0)]
    [InlineData(1.1f, 255)]
    [InlineData(float.NaN, 0)]
    [InlineData(0.501f, 128)]
    public void Whole_numbers_are_cut_at_black_and_white(float value, byte expected)
    {
        var stored = new byte[1];

        Samples.Encode([value], 8, stored);

        Assert.Equal(expected, stored[0]);
    }
}
