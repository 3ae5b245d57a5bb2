namespace LayerTools.Model;

/// <summary>How large a canvas may be, and how far from it a layer may lie.</summary>
internal static class CanvasLimits
{
    private const int LongestPsdSide = 30_000;
    private const int LongestPsbSide = 300_000;

    /// <summary>The farthest a rectangle may begin from the canvas, px: a quarter of what a 32-bit number holds, so that sums of a few never overflow.</summary>
    public const int Farthest = int.MaxValue / 4;

    /// <summary>The longest side of a rectangle, px.</summary>
    public const int LongestRectangleSide = int.MaxValue / 8;

    /// <summary>The most pixels a side may have (PSD File Formats Specification, 'File Header Section').</summary>
    public static int LongestSide(FileFormat format) => format == FileFormat.Psb ? LongestPsbSide : LongestPsdSide;

    /// <summary>Whether a rectangle lies near enough to be stored and read again.</summary>
    public static bool IsInReach(Bounds bounds) => Math.Abs((long)bounds.Left) <= Farthest && Math.Abs((long)bounds.Top) <= Farthest;
}
