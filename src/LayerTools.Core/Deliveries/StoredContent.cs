using System.Buffers;
using System.Collections.Concurrent;
using LayerTools.Model;

namespace LayerTools.Deliveries;

/// <summary>
/// Tells from the packed bytes alone that layers of two files hold the same. What differs in bytes may still hold the same. Can be used from several threads.
/// </summary>
internal sealed class StoredContent(LayerFile old, LayerFile @new) : IDisposable
{
    private const int PieceLength = 1 << 18;

    private readonly OpenedSources opened = new();
    private readonly ConcurrentDictionary<(Layer, Layer), bool> known = new();
    private readonly bool isComparable = old.ColorMode == @new.ColorMode && old.BitDepth == @new.BitDepth && old.Format == @new.Format;

    /// <summary>Whether both layers certainly hold the same pixels and masks, and lie in the same place or were moved as a whole.</summary>
    /// <exception cref="Errors.LayeredFileException">A file changed on disk.</exception>
    public bool AreSame(Layer one, Layer two) => known.GetOrAdd((one, two), pair => Compare(pair.Item1, pair.Item2));

    public void Dispose() => opened.Dispose();

    private bool Compare(Layer one, Layer two)
    {
        if (!isComparable || one.Kind != two.Kind || one.Planes.Count != two.Planes.Count || one.Detail.VectorPath is not null || two.Detail.VectorPath is not null) return false;
        if (one.Detail.LiveContent.Count + two.Detail.LiveContent.Count > 0) return false;
        if ((one.Bounds.Width, one.Bounds.Height) != (two.Bounds.Width, two.Bounds.Height) || !AreSame(one.Mask, two.Mask, one.Bounds, two.Bounds)) return false;

        // The shortest first: small differences are found without reading much.
        return one.Planes.OrderBy(plane => plane.StoredLength).All(plane => two.FindPlane(plane.Role) is { } other && AreSame(plane, other));
    }

    private static bool AreSame(LayerMask? one, LayerMask? two, Bounds oldBounds, Bounds newBounds)
    {
        if (one is null || two is null) return one is null && two is null;
        var (right, down) = (newBounds.Left - oldBounds.Left, newBounds.Top - oldBounds.Top);
        return two == one with { Bounds = Move(one.Bounds), PaintedBounds = one.PaintedBounds is { } painted ? Move(painted) : null };

        Bounds Move(Bounds bounds) => bounds.IsEmpty ? bounds : new Bounds(bounds.Left + right, bounds.Top + down, bounds.Right + right, bounds.Bottom + down);
    }

    private bool AreSame(Plane one, Plane two)
    {
        if (one.StoredLength != two.StoredLength || one.ReadCompressionWord(opened) != two.ReadCompressionWord(opened)) return false;
        if (one.Data.Length == 0) return true;
        var length = (int)Math.Min(PieceLength, one.Data.Length);
        var (oldPiece, newPiece) = (ArrayPool<byte>.Shared.Rent(length), ArrayPool<byte>.Shared.Rent(length));
        try
        {
            for (var position = 0L; position < one.Data.Length; position += length)
            {
                var count = (int)Math.Min(length, one.Data.Length - position);
                one.Data.Read(position, oldPiece.AsSpan(0, count), opened);
                two.Data.Read(position, newPiece.AsSpan(0, count), opened);
                if (!oldPiece.AsSpan(0, count).SequenceEqual(newPiece.AsSpan(0, count))) return false;
            }

            return true;
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(oldPiece);
            ArrayPool<byte>.Shared.Return(newPiece);
        }
    }
}
