namespace LayerTools.Model;

/// <summary>
/// How a canvas and all on it change size: across by the ratio of the widths, down by that of the heights. Edges thus fall on edges and the centre line on the centre line,
/// with no part of a pixel left over.
/// </summary>
internal sealed record CanvasScale(int OldWidth, int OldHeight, int NewWidth, int NewHeight)
{
    public double Across => NewWidth / (double)OldWidth;

    public double Down => NewHeight / (double)OldHeight;

    /// <summary>For sizes without a direction: the geometric mean, which keeps areas right.</summary>
    public double Mean => Math.Sqrt(Across * Down);

    public double MapX(double x) => x * NewWidth / OldWidth;

    public double MapY(double y) => y * NewHeight / OldHeight;

    /// <summary>The smallest rectangle of whole pixels that a rectangle falls into. One without pixels has no place and stays as it is.</summary>
    /// <returns>Null where it would leave the range of coordinates.</returns>
    public Bounds? Map(Bounds area)
    {
        if (area.IsEmpty) return area;
        var (left, right) = (Floor(area.Left, NewWidth, OldWidth), Ceiling(area.Right, NewWidth, OldWidth));
        var (top, bottom) = (Floor(area.Top, NewHeight, OldHeight), Ceiling(area.Bottom, NewHeight, OldHeight));
        if (Math.Abs(left) > CanvasLimits.Farthest || Math.Abs(top) > CanvasLimits.Farthest) return null;
        if (right - left > CanvasLimits.LongestRectangleSide || bottom - top > CanvasLimits.LongestRectangleSide) return null;
        return new Bounds((int)left, (int)top, (int)right, (int)bottom);
    }

    /// <summary>⌊value · multiplier / divisor⌋ in whole numbers.</summary>
    public static long Floor(long value, long multiplier, long divisor)
    {
        var product = value * multiplier;
        var quotient = product / divisor;
        return product % divisor < 0 ? quotient - 1 : quotient;
    }

    /// <summary>⌈value · multiplier / divisor⌉ in whole numbers.</summary>
    public static long Ceiling(long value, long multiplier, long divisor) => -Floor(-value, multiplier, divisor);
}
