using System.Buffers;
using LayerTools.Model;

namespace LayerTools.Pixels;

/// <summary>Collects bytes of one channel and hands them to a spool in pieces, so that no channel has to fit into memory.</summary>
internal sealed class SpoolWriter(SpoolFile spool) : WriteOnlyStream
{
    private const int PieceBytes = 1 << 18;

    private readonly List<ByteSource> pieces = [];
    private byte[] buffer = ArrayPool<byte>.Shared.Rent(PieceBytes);
    private int filled;

    /// <summary>Room for at least <paramref name="size"/> bytes; <see cref="Advance"/> says how many of them count.</summary>
    public Span<byte> GetSpan(int size)
    {
        if (size > buffer.Length - filled)
        {
            StorePiece();
            if (size > buffer.Length)
            {
                ArrayPool<byte>.Shared.Return(buffer);
                buffer = ArrayPool<byte>.Shared.Rent(size);
            }
        }

        return buffer.AsSpan(filled);
    }

    public void Advance(int count) => filled += count;

    public override void Write(byte[] buffer, int offset, int count)
    {
        for (var left = buffer.AsSpan(offset, count); !left.IsEmpty;)
        {
            var piece = left.Slice(0, Math.Min(left.Length, PieceBytes));
            piece.CopyTo(GetSpan(piece.Length));
            Advance(piece.Length);
            left = left.Slice(piece.Length);
        }
    }

    /// <summary>All that was written.</summary>
    /// <param name="first">What goes before it, for example a table of lengths that are known only now.</param>
    public ByteSource Complete(ReadOnlySpan<byte> first = default)
    {
        StorePiece();
        if (!first.IsEmpty) pieces.Insert(0, spool.Add(first));
        return pieces.Count == 1 ? pieces[0] : new JoinedBytes(pieces);
    }

    protected override void Dispose(bool disposing)
    {
        if (buffer.Length > 0) ArrayPool<byte>.Shared.Return(buffer);
        buffer = [];
        base.Dispose(disposing);
    }

    private void StorePiece()
    {
        if (filled == 0) return;
        pieces.Add(spool.Add(buffer.AsSpan(0, filled)));
        filled = 0;
    }
}
