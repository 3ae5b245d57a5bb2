namespace LayerTools.Measures.Cover;

/// <summary>A pixel of a seam: a visible pixel of a part that has, at one of its four sides, a pixel that a part in front covers.</summary>
/// <param name="X">Column, canvas px.</param>
/// <param name="Y">Row, canvas px.</param>
/// <param name="ReachSquared">The square of the distance to the nearest unpainted pixel that belongs to it, px²; <see cref="Deep"/> if none is near.</param>
/// <param name="GroundSquared">The square of the distance to open ground, px²; <see cref="Deep"/> if none is near.</param>
internal readonly record struct SeamPixel(int X, int Y, int ReachSquared, int GroundSquared)
{
    /// <summary>Stands for farther than was looked.</summary>
    public const int Deep = int.MaxValue;

    /// <summary>An unpainted pixel belongs to the pixels of the seam so far beside the nearest one too, px: on the steps of a curve the nearest ones pass over some.</summary>
    public const int Spread = 2;

    /// <summary>Outlines that run apart by 1 px in this many still cross, as they do at the end of a seam ...</summary>
    private const int FlattestCrossing = 6;

    /// <summary>... but so near to the crossing only, px; farther off they have to run apart faster.</summary>
    private const int LongestFlatEnd = 60;

    /// <summary>Open ground this near to a deep pixel makes it an end, px.</summary>
    public const int NearGround = Spread + FlattestCrossing;

    /// <summary>Open ground is looked for up to here, px.</summary>
    public static int GroundReach(int maximumDepth) => (int)Math.Ceiling(EndReach(maximumDepth));

    /// <summary>How far the part is painted on behind this pixel, px; 0 where it ends at the neighbour's edge.</summary>
    public double Depth(int maximumDepth) => ReachSquared == Deep ? maximumDepth : Math.Min(maximumDepth, Math.Sqrt(ReachSquared) - 1);

    /// <summary>
    /// Whether the part's own outline runs underneath the neighbour here, as it does where every seam ends: open ground is near for the depth. A deep pixel is one only
    /// right at the corner, where unpainted pixels belong to its neighbours.
    /// </summary>
    public bool IsEnd(int maximumDepth) => GroundSquared != Deep && Math.Sqrt(GroundSquared) < EndReach(ReachSquared == Deep ? 0 : Depth(maximumDepth));

    private static double EndReach(double depth) => Spread + Math.Max(2 * (depth + 1), Math.Min(FlattestCrossing * (depth + 1), LongestFlatEnd));
}
