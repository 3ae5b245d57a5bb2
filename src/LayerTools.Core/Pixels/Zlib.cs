using System.IO.Compression;
using LayerTools.Errors;
using LayerTools.Model;

namespace LayerTools.Pixels;

/// <summary>zlib streams (RFC 1950) of deflated bytes (RFC 1951).</summary>
internal static class Zlib
{
    /// <summary>Unpacks exactly as many bytes as the output holds, however many more there are.</summary>
    /// <exception cref="LayeredFileException">The bytes are no zlib stream, or make fewer bytes.</exception>
    public static void Inflate(byte[] packed, Span<byte> output)
    {
        try
        {
            using var stream = OpenInflater(new MemoryStream(packed, writable: false));
            if (StreamReading.TryFill(stream, output)) return;
        }
        catch (InvalidDataException error)
        {
            throw Damaged("The ZIP data is damaged.", error);
        }

        throw Damaged("The ZIP data ends too early.", null);
    }

    /// <summary>Packs bytes.</summary>
    public static byte[] Deflate(ReadOnlySpan<byte> bytes)
    {
        using var packed = new MemoryStream();
        using (var deflater = OpenDeflater(packed))
        {
            var copy = bytes.ToArray();
            deflater.Write(copy, 0, copy.Length);
        }

        return packed.ToArray();
    }

    /// <summary>A stream of the unpacked bytes. The checksum at the end is not looked at, since readers stop at the size they expect.</summary>
    /// <exception cref="InvalidDataException">The bytes are no zlib stream.</exception>
    public static Stream OpenInflater(Stream packed)
    {
#if NET8_0_OR_GREATER
        return new ZLibStream(packed, CompressionMode.Decompress);
#else
        // RFC 1950, 2.2: a method and window byte, then flags that make both a multiple of 31; bit 5 announces a dictionary.
        var method = packed.ReadByte();
        var flags = packed.ReadByte();
        if (flags < 0 || (method & 15) != 8 || ((method << 8) | flags) % 31 != 0 || (flags & 32) != 0) throw new InvalidDataException("No zlib header.");
        return new DeflateStream(packed, CompressionMode.Decompress);
#endif
    }

    /// <summary>A stream that packs what is written to it; the packed stream stays open and is complete once this is disposed.</summary>
    public static Stream OpenDeflater(Stream packed)
    {
#if NET8_0_OR_GREATER
        return new ZLibStream(packed, CompressionLevel.Optimal, leaveOpen: true);
#else
        return new ChecksummedDeflater(packed);
#endif
    }

    private static LayeredFileException Damaged(string problem, Exception? inner) =>
        new(LayeredFileErrorKind.Damaged, null, "ZIP data", -1, problem, "Restore the file from a backup.", inner);
}
