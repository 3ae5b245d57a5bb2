namespace LayerTools.Measures.Cover;

/// <summary>What the pixels of one or more seams say together.</summary>
internal sealed class SeamSummary
{
    private SeamSummary(int length, int shallow, double smallest, double median, SeamPixel place) =>
        (Length, ShallowLength, SmallestDepth, MedianDepth, Place) = (length, shallow, smallest, median, place);

    /// <summary>All pixels.</summary>
    public int Length { get; }

    /// <summary>Pixels that count and are less deep than wanted.</summary>
    public int ShallowLength { get; }

    public double SmallestDepth { get; }

    public double MedianDepth { get; }

    /// <summary>The middle one of the least deep.</summary>
    public SeamPixel Place { get; }

    /// <summary>Sums up pixels; null if there are none.</summary>
    public static SeamSummary? Of(IReadOnlyCollection<SeamPixel> pixels, double wantedDepth, int maximumDepth)
    {
        if (pixels.Count == 0) return null;
        var counted = Count(pixels, maximumDepth);
        var depths = counted.Select(pixel => pixel.Depth(maximumDepth)).OrderBy(depth => depth).ToList();
        var least = counted.Where(pixel => pixel.Depth(maximumDepth) <= depths[0]).OrderBy(pixel => pixel.Y).ThenBy(pixel => pixel.X).ToList();
        var median = (depths[(depths.Count - 1) / 2] + depths[depths.Count / 2]) / 2;
        return new SeamSummary(pixels.Count, depths.Count(depth => depth < wantedDepth), Math.Round(depths[0], 2), Math.Round(median, 2), least[least.Count / 2]);
    }

    /// <summary>The pixels that count: all but the ends, or the middle of a seam that consists of ends.</summary>
    private static List<SeamPixel> Count(IReadOnlyCollection<SeamPixel> pixels, int maximumDepth)
    {
        var counted = pixels.Where(pixel => !pixel.IsEnd(maximumDepth)).ToList();
        if (counted.Count > 0) return counted;
        var middle = pixels.Max(pixel => pixel.GroundSquared);
        return pixels.Where(pixel => pixel.GroundSquared == middle).ToList();
    }
}
