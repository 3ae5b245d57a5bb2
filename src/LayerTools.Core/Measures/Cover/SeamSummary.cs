namespace LayerTools.Measures.Cover;

/// <summary>What the pixels of a seam say together.</summary>
internal sealed class SeamSummary
{
    private SeamSummary(int length, IReadOnlyList<double> depths, double wantedDepth, SeamPixel place)
    {
        (Length, Depths, Place) = (length, depths, place);
        ShallowLength = depths.Count(depth => depth < wantedDepth);
    }

    /// <summary>All pixels.</summary>
    public int Length { get; }

    /// <summary>The depths of those that count, the smallest first.</summary>
    public IReadOnlyList<double> Depths { get; }

    /// <summary>How many of them are less deep than wanted.</summary>
    public int ShallowLength { get; }

    /// <summary>The smallest depth, to a hundredth.</summary>
    public double SmallestDepth => Math.Round(Depths[0], 2);

    /// <summary>The middle one of the least deep.</summary>
    public SeamPixel Place { get; }

    /// <summary>Sums up pixels; null if there are none.</summary>
    public static SeamSummary? Of(IReadOnlyCollection<SeamPixel> pixels, double wantedDepth, int maximumDepth)
    {
        if (pixels.Count == 0) return null;
        var counted = Count(pixels, maximumDepth);
        var depths = counted.Select(pixel => pixel.Depth(maximumDepth)).OrderBy(depth => depth).ToList();
        var least = counted.Where(pixel => pixel.Depth(maximumDepth) <= depths[0]).OrderBy(pixel => pixel.Y).ThenBy(pixel => pixel.X).ToList();
        return new SeamSummary(pixels.Count, depths, wantedDepth, least[least.Count / 2]);
    }

    /// <summary>The pixels that count: all but the ends, or the middle half of a seam that consists of ends.</summary>
    public static IReadOnlyList<SeamPixel> Count(IReadOnlyCollection<SeamPixel> pixels, int maximumDepth)
    {
        var counted = pixels.Where(pixel => !pixel.IsEnd(maximumDepth)).ToList();
        if (counted.Count > 0) return counted;
        var farthest = pixels.Max(pixel => pixel.GroundSquared);
        return pixels.Where(pixel => 4L * pixel.GroundSquared >= farthest).ToList();
    }

    /// <summary>The median of depths, the smallest first, to a hundredth: the middle one, or half way between the two in the middle; null without any.</summary>
    public static double? Median(IReadOnlyList<double> depths) =>
        depths.Count == 0 ? null : Math.Round((depths[(depths.Count - 1) / 2] + depths[depths.Count / 2]) / 2, 2);
}
