using LayerTools.Model;

namespace LayerTools.Pixels;

/// <summary>Several sources, one behind the other.</summary>
internal sealed class JoinedBytes : ByteSource
{
    private readonly ByteSource[] parts;
    private readonly long[] ends;

    public JoinedBytes(IEnumerable<ByteSource> parts)
    {
        this.parts = parts.Where(part => part.Length > 0).ToArray();
        ends = new long[this.parts.Length];
        for (var i = 0; i < ends.Length; i++)
        {
            Length += this.parts[i].Length;
            ends[i] = Length;
        }
    }

    public override long Length { get; }

    public override void Read(long position, Span<byte> buffer, OpenedSources opened)
    {
        if (position < 0 || position + buffer.Length > Length) throw new ArgumentOutOfRangeException(nameof(position));
        if (buffer.IsEmpty) return;
        var found = Array.BinarySearch(ends, position + 1);
        for (var i = found < 0 ? ~found : found; !buffer.IsEmpty; i++)
        {
            var start = ends[i] - parts[i].Length;
            var count = (int)Math.Min(buffer.Length, ends[i] - position);
            parts[i].Read(position - start, buffer.Slice(0, count), opened);
            buffer = buffer.Slice(count);
            position += count;
        }
    }
}
