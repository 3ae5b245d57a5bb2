using CsCheck;
using LayerTools.Errors;
using LayerTools.Pixels;
using Xunit;

namespace LayerTools.Tests.Pixels;

public class PackBitsTests
{
    [Fact]
    public void The_published_example_unpacks()
    {
        // Apple Technical Note TN1023, also TIFF 6.0, section 9.
        var packed = Convert.FromHexString("FEAA028000 2AFDAA0380002A22F7AA".Replace(" ", string.Empty));
        var row = new byte[24];
        PackBits.Decode(packed, row);
        Assert.Equal("AAAAAA80002AAAAAAAAA80002A22AAAAAAAAAAAAAAAAAAAA", Convert.ToHexString(row));
    }

    [Fact]
    public void The_published_example_packs_as_small()
    {
        var row = Convert.FromHexString("AAAAAA80002AAAAAAAAA80002A22AAAAAAAAAAAAAAAAAAAA");
        var packed = new byte[PackBits.GetMaxPackedLength(row.Length)];
        var length = PackBits.Encode(row, packed);
        Assert.Equal("FEAA0280002AFDAA0380002A22F7AA", Convert.ToHexString(packed.AsSpan(0, length)));
    }

    [Theory]
    [InlineData("8000 41 80", "41", "a header of -128 means nothing, wherever it stands")]
    [InlineData("FF41", "4141", "the shortest run")]
    [InlineData("", "", "an empty row")]
    [InlineData("80", "", "an empty row with a header that means nothing")]
    public void Odd_but_sound_rows_unpack(string packed, string expected, string reason)
    {
        var row = new byte[expected.Length / 2];
        PackBits.Decode(Convert.FromHexString(packed.Replace(" ", string.Empty)), row);
        Assert.True(expected == Convert.ToHexString(row), reason);
    }

    [Theory]
    [InlineData("0041", 2, "holds 1 bytes where 2")]
    [InlineData("", 1, "holds 0 bytes where 1")]
    [InlineData("FE41", 2, "more than the 2 bytes")]
    [InlineData("02414243", 2, "more than the 2 bytes")]
    [InlineData("00410042", 1, "more than the 1 bytes")]
    [InlineData("0241", 3, "ends inside a stretch")]
    [InlineData("02", 3, "ends inside a stretch")]
    [InlineData("FE", 3, "ends inside a run")]
    public void A_row_that_does_not_fit_is_refused(string packed, int rowBytes, string problem)
    {
        var error = Assert.Throws<LayeredFileException>(() => PackBits.Decode(Convert.FromHexString(packed), new byte[rowBytes]));
        Assert.Equal(LayeredFileErrorKind.Damaged, error.Kind);
        Assert.Contains(problem, error.Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "", "an empty row")]
    [InlineData("02414243", "02434241", "plain bytes turn around")]
    [InlineData("FF41024243440045", "0045024443 42FF41", "runs change places")]
    [InlineData("8000418080FF42", "FF420041", "headers that mean nothing go")]
    public void Packed_rows_flip_without_unpacking(string packed, string expected, string reason)
    {
        var bytes = Convert.FromHexString(packed);
        var unpacked = new byte[100];
        var rowBytes = Enumerable.Range(0, 100).First(count => PackBits.TryDecode(bytes, unpacked.AsSpan(0, count)) is null);
        var flipped = new byte[bytes.Length];
        Assert.Null(PackBits.TryFlip(bytes, rowBytes, flipped, out var length));
        Assert.True(expected.Replace(" ", string.Empty) == Convert.ToHexString(flipped.AsSpan(flipped.Length - length)), reason);
    }

    [Fact]
    public void Flipped_packed_rows_unpack_to_flipped_rows() => Rows.Any.Sample(row =>
    {
        var packed = new byte[PackBits.GetMaxPackedLength(row.Length)];
        packed = packed[..PackBits.Encode(row, packed)];
        var flipped = new byte[packed.Length];
        if (PackBits.TryFlip(packed, row.Length, flipped, out var length) is not null || length != packed.Length) return false;
        var back = new byte[row.Length];
        PackBits.Decode(flipped, back);
        Array.Reverse(back);
        return back.AsSpan().SequenceEqual(row);
    });

    [Fact]
    public void Flipping_finds_the_same_damage_as_unpacking() => Gen.Select(Gen.Byte.Array[0, 12], Gen.Int[0, 300]).Sample((packed, rowBytes) =>
        PackBits.TryFlip(packed, rowBytes, new byte[packed.Length], out _) == PackBits.TryDecode(packed, new byte[rowBytes]));

    [Fact]
    public void Nothing_outside_the_row_is_written() => Gen.Select(Gen.Byte.Array[0, 60], Gen.Int[0, 80]).Sample((packed, rowBytes) =>
    {
        var memory = new byte[rowBytes + 40];
        Array.Fill(memory, (byte)0x5A);
        PackBits.TryDecode(packed, memory.AsSpan(20, rowBytes));
        return memory.AsSpan(0, 20).IndexOfAnyExcept((byte)0x5A) < 0 && memory.AsSpan(20 + rowBytes).IndexOfAnyExcept((byte)0x5A) < 0;
    });

    [Fact]
    public void What_is_packed_unpacks_and_never_grows_beyond_the_limit() => Rows.Any.Sample(row =>
    {
        var packed = new byte[PackBits.GetMaxPackedLength(row.Length)];
        var length = PackBits.Encode(row, packed);
        var back = new byte[row.Length];
        PackBits.Decode(packed.AsSpan(0, length), back);
        return back.AsSpan().SequenceEqual(row);
    });

    [Theory]
    [InlineData(1, 2)]
    [InlineData(128, 2)]
    [InlineData(129, 4)]
    [InlineData(256, 4)]
    [InlineData(5000, 80)]
    public void One_colour_packs_to_runs_of_128(int rowBytes, int expected)
    {
        var row = new byte[rowBytes];
        Array.Fill(row, (byte)7);
        Assert.Equal(expected, PackBits.Encode(row, new byte[PackBits.GetMaxPackedLength(rowBytes)]));
    }

    [Fact]
    public void Noise_takes_the_worst_case()
    {
        var row = Enumerable.Range(0, 300).Select(i => (byte)(i * 7)).ToArray();
        var limit = PackBits.GetMaxPackedLength(row.Length);
        Assert.Equal(303, limit);
        Assert.Equal(limit, PackBits.Encode(row, new byte[limit]));
    }
}
