using System.Buffers.Binary;
using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>Builds a file, or a part of one, big-endian: new bytes in memory, stored ones as the places where they are.</summary>
internal sealed class PsdOutput
{
    private const int CopyBufferLength = 1 << 20;
    private readonly List<ByteSource> parts = [];
    private byte[] bytes = new byte[256];
    private int count;
    private long partsLength;

    public long Length => partsLength + count;

    /// <summary>The bytes written, where no place in a file is among them.</summary>
    public byte[] ToArray() => parts.Count == 0 ? bytes.AsSpan(0, count).ToArray() : throw new InvalidOperationException("Some parts are places in a file.");

    public void WriteByte(byte value) => Grow(1)[0] = value;

    public void WriteUInt16(ushort value) => BinaryPrimitives.WriteUInt16BigEndian(Grow(2), value);

    public void WriteInt16(short value) => BinaryPrimitives.WriteInt16BigEndian(Grow(2), value);

    public void WriteUInt32(uint value) => BinaryPrimitives.WriteUInt32BigEndian(Grow(4), value);

    public void WriteInt32(int value) => BinaryPrimitives.WriteInt32BigEndian(Grow(4), value);

    public void WriteInt64(long value) => BinaryPrimitives.WriteInt64BigEndian(Grow(8), value);

    public void WriteLength(long value, bool wide)
    {
        if (wide) WriteInt64(value);
        else WriteUInt32(checked((uint)value));
    }

    public void Write(ReadOnlySpan<byte> data) => data.CopyTo(Grow(data.Length));

    public void WriteZeros(int length) => Grow(length).Clear();

    public void Write(ByteSource source)
    {
        if (source is MemoryBytes memory)
        {
            Write(memory.Bytes);
            return;
        }

        Flush();
        parts.Add(source);
        partsLength += source.Length;
    }

    public void Write(PsdOutput other)
    {
        foreach (var part in other.parts) Write(part);
        Write(other.bytes.AsSpan(0, other.count));
    }

    /// <summary>A channel with its compression word.</summary>
    public void Write(Plane plane)
    {
        if (plane.Stored is { } stored)
        {
            Write(stored);
            return;
        }

        if (!plane.HasCompressionWord) return;
        WriteUInt16((ushort)plane.CompressionWord!.Value);
        Write(plane.Data);
    }

    /// <summary>Writes everything, joining places that follow each other.</summary>
    public void CopyTo(Stream stream, OpenedSources opened)
    {
        Flush();
        var buffer = System.Buffers.ArrayPool<byte>.Shared.Rent(CopyBufferLength);
        try
        {
            foreach (var part in JoinNeighbours())
            {
                if (part is MemoryBytes memory)
                {
                    stream.Write(memory.Bytes, 0, memory.Bytes.Length);
                    continue;
                }

                for (var position = 0L; position < part.Length;)
                {
                    var length = (int)Math.Min(CopyBufferLength, part.Length - position);
                    part.Read(position, buffer.AsSpan(0, length), opened);
                    stream.Write(buffer, 0, length);
                    position += length;
                }
            }
        }
        finally
        {
            System.Buffers.ArrayPool<byte>.Shared.Return(buffer);
        }
    }

    private IEnumerable<ByteSource> JoinNeighbours()
    {
        FileSlice? pending = null;
        foreach (var part in parts)
        {
            if (pending is not null && part is FileSlice next && next.File == pending.File && next.Offset == pending.Offset + pending.Length)
            {
                pending = new FileSlice(pending.File, pending.Offset, pending.Length + next.Length);
                continue;
            }

            if (pending is not null) yield return pending;
            pending = part as FileSlice;
            if (pending is null) yield return part;
        }

        if (pending is not null) yield return pending;
    }

    private void Flush()
    {
        if (count == 0) return;
        parts.Add(new MemoryBytes(bytes.AsSpan(0, count).ToArray()));
        partsLength += count;
        count = 0;
    }

    private Span<byte> Grow(int length)
    {
        if (bytes.Length - count < length) Array.Resize(ref bytes, Math.Max(checked(count + length), bytes.Length * 2));
        var span = bytes.AsSpan(count, length);
        count += length;
        return span;
    }
}
