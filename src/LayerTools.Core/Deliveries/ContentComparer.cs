using LayerTools.Model;

namespace LayerTools.Deliveries;

/// <summary>Compares what a layer held with what it holds.</summary>
internal sealed class ContentComparer(ContentReader oldReader, ContentReader newReader, CancellationToken cancellation)
{
    /// <summary>Blocks along each side of the pictures by which a resized part is told from a repainted one.</summary>
    private const int CompareSide = 48;

    /// <summary>The least change of a side that is looked at as a change of size, % and px.</summary>
    private const double LeastPercent = 1;
    private const int LeastPixels = 2;

    /// <summary>How alike the old picture, stretched, has to be to the new one.</summary>
    private const double LeastLikeness = 0.95;

    /// <summary>Compares two layers that are known not to be the same byte for byte.</summary>
    public ContentDifference Compare(Layer old, PartContent oldContent, Layer @new, PartContent newContent)
    {
        var masked = oldContent.Mask == newContent.Mask ? LayerChange.Same : LayerChange.Masked;
        var (from, to) = (oldContent.Painted, newContent.Painted);
        if (oldContent.Pixels == newContent.Pixels) return Move(masked, to.Left - from.Left, to.Top - from.Top);
        if (from.IsEmpty && to.IsEmpty) return new ContentDifference { Change = masked | LayerChange.Repainted };
        if (!oldReader.CanPaint || !newReader.CanPaint) return new ContentDifference { Change = masked | LayerChange.Repainted };

        var pixels = PixelDifference.FindLeast(oldReader, old, from, newReader, @new, to, cancellation);
        if (IsResized(old, from, @new, to, pixels))
        {
            return new ContentDifference { Change = masked | LayerChange.Resized, Percent = (100.0 * to.Width / from.Width, 100.0 * to.Height / from.Height) };
        }

        // Files of unlike depth or colours may show the same all the same.
        var isRepainted = pixels.Differing > 0 || (old.GetFile()!.BitDepth == @new.GetFile()!.BitDepth && old.GetFile()!.ColorMode == @new.GetFile()!.ColorMode);
        return Move(masked | (isRepainted ? LayerChange.Repainted : LayerChange.Same), pixels.Right, pixels.Down) with { Pixels = isRepainted ? pixels : null };
    }

    private static ContentDifference Move(LayerChange change, int right, int down) =>
        new() { Change = (right, down) == (0, 0) ? change : change | LayerChange.Moved, Shift = (right, down) };

    private bool IsResized(Layer old, Bounds from, Layer @new, Bounds to, PixelDifference pixels)
    {
        if (from.IsEmpty || to.IsEmpty || !(Differs(from.Width, to.Width) || Differs(from.Height, to.Height))) return false;
        var stretched = oldReader.Paint(old, from, CompareSide).Compare(newReader.Paint(@new, to, CompareSide));
        if (stretched < LeastLikeness) return false;
        var place = from.Shift(pixels.Right, pixels.Down).Union(to);
        var inPlace = oldReader.Paint(old, place.Shift(-pixels.Right, -pixels.Down), CompareSide).Compare(newReader.Paint(@new, place, CompareSide));
        return 1 - stretched < (1 - inPlace) / 2;
    }

    private static bool Differs(int one, int two) => Math.Abs(one - two) >= LeastPixels && Math.Abs(one - two) * 100.0 >= LeastPercent * one;
}
