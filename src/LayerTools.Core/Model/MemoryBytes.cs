namespace LayerTools.Model;

/// <summary>Bytes in memory.</summary>
internal sealed class MemoryBytes(byte[] bytes) : ByteSource
{
    public static MemoryBytes Empty { get; } = new([]);

    public byte[] Bytes { get; } = bytes;

    public override long Length => Bytes.Length;

    public override void Read(long position, Span<byte> buffer, OpenedSources opened) =>
        Bytes.AsSpan(checked((int)position), buffer.Length).CopyTo(buffer);
}
