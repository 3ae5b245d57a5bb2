using LayerTools.Model;

namespace LayerTools.Pixels;

/// <summary>Reads a <see cref="ByteSource"/> from front to back as a stream.</summary>
internal sealed class ByteSourceStream(ByteSource source, OpenedSources opened) : ReadOnlyStream
{
    private long position;

    public override int Read(byte[] buffer, int offset, int count)
    {
        var available = (int)Math.Min(count, source.Length - position);
        source.Read(position, buffer.AsSpan(offset, available), opened);
        position += available;
        return available;
    }
}
