using System.IO.Compression;
using CsCheck;
using LayerTools.Errors;
using LayerTools.Pixels;
using Xunit;

namespace LayerTools.Tests.Pixels;

public class ZlibTests
{
    [Fact]
    public void What_is_packed_unpacks() => Rows.Any.Sample(bytes =>
    {
        var back = new byte[bytes.Length];
        Zlib.Inflate(Zlib.Deflate(bytes), back);
        return back.AsSpan().SequenceEqual(bytes);
    });

    [Fact]
    public void What_is_packed_is_a_zlib_stream_to_the_framework() => Rows.Any.Sample(bytes =>
    {
        // RFC 1950: the framework's own reader checks header and Adler-32 when it reads to the end.
        using var stream = new ZLibStream(new MemoryStream(Zlib.Deflate(bytes)), CompressionMode.Decompress);
        using var back = new MemoryStream();
        stream.CopyTo(back);
        return back.ToArray().AsSpan().SequenceEqual(bytes);
    });

    [Fact]
    public void A_bomb_is_cut_at_the_expected_size()
    {
        var bomb = Zlib.Deflate(new byte[64 << 20]);
        var before = GC.GetAllocatedBytesForCurrentThread();
        Zlib.Inflate(bomb, new byte[10]);
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 1 << 20);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(40)]
    public void Too_little_data_is_an_error(int kept)
    {
        var packed = Zlib.Deflate(Enumerable.Range(0, 1000).Select(i => (byte)(i * i >> 3)).ToArray());
        var error = Assert.Throws<LayeredFileException>(() => Zlib.Inflate(packed[..kept], new byte[1000]));
        Assert.Equal(LayeredFileErrorKind.Damaged, error.Kind);
    }

    [Fact]
    public void A_wrong_checksum_is_an_error()
    {
        var bytes = Enumerable.Range(0, 1000).Select(i => (byte)(i * i >> 3)).ToArray();
        var packed = Zlib.Deflate(bytes);
        packed[^1] ^= 1;
        Assert.Throws<LayeredFileException>(() => Zlib.Inflate(packed, new byte[1000]));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public void Filling_behind_the_stream_is_no_error(int filling)
    {
        var bytes = Enumerable.Range(0, 1000).Select(i => (byte)(i * i >> 3)).ToArray();
        var back = new byte[1000];
        Zlib.Inflate([.. Zlib.Deflate(bytes), .. new byte[filling]], back);
        Assert.Equal(bytes, back);
    }

    [Fact]
    public void Bytes_that_are_no_zlib_stream_are_an_error()
    {
        var error = Assert.Throws<LayeredFileException>(() => Zlib.Inflate([0x12, 0x34, 0x56, 0x78, 0x9A], new byte[4]));
        Assert.Equal(LayeredFileErrorKind.Damaged, error.Kind);
    }
}
