using LayerTools.Model;

namespace LayerTools.Deliveries;

/// <summary>Tells from the packed bytes alone that layers of two files hold the same. What differs in bytes may still hold the same.</summary>
internal sealed class StoredContent(LayerFile old, LayerFile @new) : IDisposable
{
    private const int PieceLength = 1 << 18;

    private readonly OpenedSources opened = new();
    private readonly byte[] oldPiece = new byte[PieceLength];
    private readonly byte[] newPiece = new byte[PieceLength];
    private readonly bool isComparable = old.ColorMode == @new.ColorMode && old.BitDepth == @new.BitDepth && old.Format == @new.Format;

    /// <summary>Whether both layers certainly hold the same pixels and masks, and lie in the same place or were moved as a whole.</summary>
    public bool AreSame(Layer one, Layer two)
    {
        if (!isComparable || one.Kind != two.Kind || one.Planes.Count != two.Planes.Count || one.Detail.VectorPath is not null || two.Detail.VectorPath is not null) return false;
        if (one.Detail.LiveContent.Count + two.Detail.LiveContent.Count > 0) return false;
        if ((one.Bounds.Width, one.Bounds.Height) != (two.Bounds.Width, two.Bounds.Height) || !AreSame(one.Mask, two.Mask, one.Bounds, two.Bounds)) return false;
        return one.Planes.All(plane => two.FindPlane(plane.Role) is { } other && AreSame(plane, other));
    }

    public void Dispose() => opened.Dispose();

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
        for (var position = 0L; position < one.Data.Length; position += PieceLength)
        {
            var count = (int)Math.Min(PieceLength, one.Data.Length - position);
            one.Data.Read(position, oldPiece.AsSpan(0, count), opened);
            two.Data.Read(position, newPiece.AsSpan(0, count), opened);
            if (!oldPiece.AsSpan(0, count).SequenceEqual(newPiece.AsSpan(0, count))) return false;
        }

        return true;
    }
}
