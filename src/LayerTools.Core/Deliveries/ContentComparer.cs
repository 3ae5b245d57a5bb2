using LayerTools.Model;

namespace LayerTools.Deliveries;

/// <summary>Compares what a layer held with what it holds.</summary>
internal sealed class ContentComparer(ContentCache oldContents, ContentCache newContents, CancellationToken cancellation)
{
    /// <summary>Blocks along each side of the pictures by which a resized part is told from a repainted one.</summary>
    private const int CompareSide = 48;

    /// <summary>The least change of a side that is looked at as a change of size, % and px.</summary>
    private const double LeastPercent = 1;
    private const int LeastPixels = 2;

    /// <summary>How alike the old picture, stretched, has to be to the new one.</summary>
    private const double LeastLikeness = 0.95;

    private readonly ContentReader oldReader = oldContents.Reader;
    private readonly ContentReader newReader = newContents.Reader;

    /// <summary>Compares two layers that are not known to be the same byte for byte. Can be used from several threads.</summary>
    public ContentDifference Compare(LayerMatch match)
    {
        var (old, @new) = (match.Old, match.New);
        PartOutline oldContent = (PartOutline?)oldContents.Find(old) ?? oldReader.ReadOutline(old);
        PartOutline newContent = (PartOutline?)newContents.Find(@new) ?? newReader.ReadOutline(@new);
        var (from, to) = (oldContent.Painted, newContent.Painted);
        var hasSamePixels = oldContent is PartContent one && newContent is PartContent two ? one.Pixels == two.Pixels : oldReader.HasPixelsOf(old, from, newReader, @new, to);
        if (hasSamePixels)
        {
            // Fills and adjustments lie where their masks do.
            var isMask = from.IsEmpty && !old.IsGroup && oldContent.MaskShape == newContent.MaskShape;
            return isMask
                ? Move(LayerChange.Same, newContent.MaskPlace.X - oldContent.MaskPlace.X, newContent.MaskPlace.Y - oldContent.MaskPlace.Y)
                : Move(LayerChange.Same, to.Left - from.Left, to.Top - from.Top);
        }

        if ((from.IsEmpty && to.IsEmpty) || !oldReader.CanPaint || !newReader.CanPaint) return Move(LayerChange.Repainted, 0, 0);

        var pixels = PixelDifference.FindLeast(oldReader, old, from, newReader, @new, to, cancellation);
        if (IsResized(old, from, @new, to, pixels))
        {
            return Move(LayerChange.Resized, 0, 0) with { Percent = (100.0 * to.Width / from.Width, 100.0 * to.Height / from.Height) };
        }

        // Files of unlike depth or colours may show the same all the same.
        var isRepainted = pixels.Differing > 0 || (oldContents.File.BitDepth == newContents.File.BitDepth && oldContents.File.ColorMode == newContents.File.ColorMode);
        return Move(isRepainted ? LayerChange.Repainted : LayerChange.Same, pixels.Right, pixels.Down) with { Pixels = isRepainted ? pixels : null };

        ContentDifference Move(LayerChange change, int right, int down)
        {
            if ((right, down) != (0, 0)) change |= LayerChange.Moved;
            if (!oldContent.HasMaskOf(newContent, right, down)) change |= LayerChange.Masked;
            return new ContentDifference { Change = change, Shift = (right, down) };
        }
    }

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
