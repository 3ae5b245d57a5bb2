#if NET8_0_OR_GREATER
using System.IO.Compression;
#endif
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
            if (StreamReading.TryFill(stream, output))
            {
                // Finds the end and with it the checksum, if the stream ends where it should.
                stream.ReadByte();
                return;
            }
        }
        catch (Exception error) when (IsDamage(error))
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

    /// <summary>A stream of the unpacked bytes, which checks the checksum when a read finds the end.</summary>
    /// <exception cref="InvalidDataException">The bytes are no zlib stream.</exception>
    public static Stream OpenInflater(Stream packed)
    {
#if NET8_0_OR_GREATER
        return new ZLibStream(packed, CompressionMode.Decompress);
#else
        return new ChecksummedInflater(packed);
#endif
    }

    /// <summary>Whether an error of the inflater means that the bytes are no good. A stream that asks for a preset dictionary (RFC 1950, 2.2) is told by the library in an error of a type that is not public.</summary>
    public static bool IsDamage(Exception error) => error is InvalidDataException || (error is IOException && error.GetType().Namespace == "System.IO.Compression");

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
