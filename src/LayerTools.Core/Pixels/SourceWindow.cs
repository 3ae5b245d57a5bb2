using System.Buffers;
using LayerTools.Model;

namespace LayerTools.Pixels;

/// <summary>Reads a <see cref="ByteSource"/> from front to back through a buffer, so that short rows do not cost one read each.</summary>
internal sealed class SourceWindow(ByteSource source, OpenedSources opened, long position) : IDisposable
{
    /// <summary>Modest, since drawing a picture keeps a thousand channels and more open at a time.</summary>
    private const int BufferBytes = 32 << 10;

    private byte[] buffer = [];
    private int begin;
    private int end;

    /// <summary>Bytes from the start of the source to the next byte.</summary>
    public long Position { get; private set; } = position;

    /// <summary>The next bytes; valid until the next call.</summary>
    public ReadOnlySpan<byte> Take(int count)
    {
        if (end - begin < count) Load(count);
        var taken = buffer.AsSpan(begin, count);
        begin += count;
        Position += count;
        return taken;
    }

    public void Skip(long count)
    {
        Position += count;
        if (count <= end - begin) begin += (int)count;
        else begin = end = 0;
    }

    public void Dispose()
    {
        if (buffer.Length > 0) ArrayPool<byte>.Shared.Return(buffer);
        buffer = [];
        begin = end = 0;
    }

    private void Load(int count)
    {
        var kept = buffer.AsSpan(begin, end - begin);
        var wanted = (int)Math.Min(Math.Max(count, BufferBytes), source.Length - Position);
        if (wanted < count) throw new ArgumentOutOfRangeException(nameof(count));
        if (wanted > buffer.Length)
        {
            var larger = ArrayPool<byte>.Shared.Rent(wanted);
            kept.CopyTo(larger);
            if (buffer.Length > 0) ArrayPool<byte>.Shared.Return(buffer);
            buffer = larger;
        }
        else
        {
            kept.CopyTo(buffer);
        }

        source.Read(Position + kept.Length, buffer.AsSpan(kept.Length, wanted - kept.Length), opened);
        begin = 0;
        end = wanted;
    }
}
