#if !NET8_0_OR_GREATER
using System.IO.Compression;

namespace LayerTools.Pixels;

/// <summary>Writes a zlib stream where the framework knows only the deflated part: header before, Adler-32 behind (RFC 1950).</summary>
internal sealed class ChecksummedDeflater : WriteOnlyStream
{
    private const uint Modulus = 65521;

    /// <summary>How many bytes can be summed before the sums could leave 32 bits (RFC 1950, section 9).</summary>
    private const int BytesPerReduction = 5552;

    private readonly Stream packed;
    private readonly DeflateStream deflater;
    private uint sum = 1;
    private uint sumOfSums;

    public ChecksummedDeflater(Stream packed)
    {
        this.packed = packed;
        packed.WriteByte(0x78);
        packed.WriteByte(0x9C);
        deflater = new DeflateStream(packed, CompressionLevel.Optimal, leaveOpen: true);
    }

    public override void Write(byte[] buffer, int offset, int count)
    {
        deflater.Write(buffer, offset, count);
        for (var end = offset + count; offset < end;)
        {
            for (var stop = Math.Min(end, offset + BytesPerReduction); offset < stop; offset++)
            {
                sum += buffer[offset];
                sumOfSums += sum;
            }

            sum %= Modulus;
            sumOfSums %= Modulus;
        }
    }

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            deflater.Dispose();
            var checksum = (sumOfSums << 16) | sum;
            for (var shift = 24; shift >= 0; shift -= 8) packed.WriteByte((byte)(checksum >> shift));
        }

        base.Dispose(disposing);
    }
}
#endif
