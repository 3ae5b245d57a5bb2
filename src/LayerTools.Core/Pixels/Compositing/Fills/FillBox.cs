using LayerTools.Model;

namespace LayerTools.Pixels.Compositing.Fills;

/// <summary>A rectangle, canvas px, that need not end at whole pixels: what a gradient is fitted into.</summary>
internal readonly record struct FillBox(double Left, double Top, double Right, double Bottom)
{
    public double Width => Right - Left;

    public double Height => Bottom - Top;

    public static FillBox Of(Bounds bounds) => new(bounds.Left, bounds.Top, bounds.Right, bounds.Bottom);

    public FillBox Union(FillBox other) => new(Math.Min(Left, other.Left), Math.Min(Top, other.Top), Math.Max(Right, other.Right), Math.Max(Bottom, other.Bottom));

    /// <summary>What both hold; without width or height if they share nothing.</summary>
    public FillBox Intersect(FillBox other)
    {
        var (left, top) = (Math.Max(Left, other.Left), Math.Max(Top, other.Top));
        return new FillBox(left, top, Math.Max(left, Math.Min(Right, other.Right)), Math.Max(top, Math.Min(Bottom, other.Bottom)));
    }

    public FillBox Inflate(double by) => new(Left - by, Top - by, Right + by, Bottom + by);
}
