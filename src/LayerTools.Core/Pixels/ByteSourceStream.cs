using LayerTools.Model;

namespace LayerTools.Pixels;

/// <summary>Reads a <see cref="ByteSource"/> from front to back as a stream.</summary>
internal sealed class ByteSourceStream(ByteSource source, OpenedSources opened) : Stream
{
    private long position;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => source.Length;

    public override long Position
    {
        get => position;
        set => throw new NotSupportedException();
    }

    public override int Read(byte[] buffer, int offset, int count)
    {
        var available = (int)Math.Min(count, source.Length - position);
        source.Read(position, buffer.AsSpan(offset, available), opened);
        position += available;
        return available;
    }

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
}
