using System.Buffers.Binary;
using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>Builds a part of a file in memory, big-endian.</summary>
internal sealed class PsdOutput
{
    private byte[] bytes = new byte[256];

    public int Length { get; private set; }

    public ReadOnlySpan<byte> Written => bytes.AsSpan(0, Length);

    public byte[] ToArray() => Written.ToArray();

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

    public void WriteZeros(int count) => Grow(count).Clear();

    public void WriteSource(ByteSource source, OpenedSources opened) => source.Read(0, Grow(checked((int)source.Length)), opened);

    private Span<byte> Grow(int count)
    {
        if (bytes.Length - Length < count) Array.Resize(ref bytes, Math.Max(checked(Length + count), bytes.Length * 2));
        var span = bytes.AsSpan(Length, count);
        Length += count;
        return span;
    }
}
