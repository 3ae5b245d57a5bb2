#if !NET8_0_OR_GREATER
using System.Buffers.Binary;
using System.IO.Compression;

namespace LayerTools.Pixels;

/// <summary>Reads a zlib stream (RFC 1950) where the framework knows only the deflated part: header before, Adler-32 behind.</summary>
internal sealed class ChecksummedInflater : ReadOnlyStream
{
    private readonly TailStream packed;
    private readonly DeflateStream inflater;
    private readonly Adler32 checksum = new();

    /// <exception cref="InvalidDataException">The stream has no zlib header.</exception>
    public ChecksummedInflater(Stream packed)
    {
        // RFC 1950, 2.2: a method and window byte, then flags that make both a multiple of 31; bit 5 announces a dictionary.
        var method = packed.ReadByte();
        var flags = packed.ReadByte();
        if (flags < 0 || (method & 15) != 8 || ((method << 8) | flags) % 31 != 0 || (flags & 32) != 0) throw new InvalidDataException("No zlib header.");
        this.packed = new TailStream(packed);
        inflater = new DeflateStream(this.packed, CompressionMode.Decompress);
    }

    /// <exception cref="InvalidDataException">The data is damaged.</exception>
    public override int Read(byte[] buffer, int offset, int count)
    {
        var read = inflater.Read(buffer, offset, count);
        if (read > 0) checksum.Add(buffer.AsSpan(offset, read));
        else if (count > 0) CheckSum();
        return read;
    }

    protected override void Dispose(bool disposing)
    {
        if (disposing) inflater.Dispose();
        base.Dispose(disposing);
    }

    /// <summary>The framework does not tell where the deflated part ended, so the sum is looked for at the end, where filling may follow it.</summary>
    private void CheckSum()
    {
        var expected = new byte[4];
        BinaryPrimitives.WriteUInt32BigEndian(expected, checksum.Value);
        if (packed.ReadTail().IndexOf(expected) < 0) throw new InvalidDataException("The checksum differs.");
    }

    /// <summary>Remembers the last bytes that went through.</summary>
    private sealed class TailStream(Stream stream) : ReadOnlyStream
    {
        private const int TailBytes = 16;

        private readonly byte[] tail = new byte[TailBytes];
        private int kept;

        public override int Read(byte[] buffer, int offset, int count)
        {
            var read = stream.Read(buffer, offset, count);
            var added = Math.Min(read, TailBytes);
            var old = Math.Min(kept, TailBytes - added);
            tail.AsSpan(kept - old, old).CopyTo(tail);
            buffer.AsSpan(offset + read - added, added).CopyTo(tail.AsSpan(old));
            kept = old + added;
            return read;
        }

        public ReadOnlySpan<byte> ReadTail()
        {
            var buffer = new byte[1 << 12];
            while (Read(buffer, 0, buffer.Length) > 0)
            {
            }

            return tail.AsSpan(0, kept);
        }

        protected override void Dispose(bool disposing)
        {
            if (disposing) stream.Dispose();
            base.Dispose(disposing);
        }
    }
}
#endif
