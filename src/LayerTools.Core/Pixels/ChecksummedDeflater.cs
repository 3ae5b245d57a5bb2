#if !NET8_0_OR_GREATER
using System.IO.Compression;

namespace LayerTools.Pixels;

/// <summary>Writes a zlib stream where the framework knows only the deflated part: header before, Adler-32 behind (RFC 1950).</summary>
internal sealed class ChecksummedDeflater : WriteOnlyStream
{
    private readonly Stream packed;
    private readonly DeflateStream deflater;
    private readonly Adler32 checksum = new();

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
        checksum.Add(buffer.AsSpan(offset, count));
    }

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            deflater.Dispose();
            for (var shift = 24; shift >= 0; shift -= 8) packed.WriteByte((byte)(checksum.Value >> shift));
        }

        base.Dispose(disposing);
    }
}
#endif
