namespace LayerTools.Model;

/// <summary>A rectangle in canvas pixels: left and top inside, right and bottom just outside. May lie outside the canvas.</summary>
/// <param name="Left">First column, px.</param>
/// <param name="Top">First row, px.</param>
/// <param name="Right">Column after the last, px.</param>
/// <param name="Bottom">Row after the last, px.</param>
public readonly record struct Bounds(int Left, int Top, int Right, int Bottom)
{
    /// <summary>The rectangle without any pixel.</summary>
    public static Bounds Empty => default;

    /// <summary>Columns, px; 0 or more for every rectangle that was read cleanly.</summary>
    public int Width => Right - Left;

    /// <summary>Rows, px.</summary>
    public int Height => Bottom - Top;

    /// <summary>Whether the rectangle holds no pixel.</summary>
    public bool IsEmpty => Right <= Left || Bottom <= Top;

    /// <summary>Columns × rows, px², as a number that cannot overflow.</summary>
    public long Area => IsEmpty ? 0 : (long)Width * Height;

    /// <summary>A rectangle from its corner and size.</summary>
    public static Bounds FromSize(int left, int top, int width, int height) => new(left, top, checked(left + width), checked(top + height));

    /// <summary>What both rectangles hold; <see cref="Empty"/> if they share no pixel.</summary>
    public Bounds Intersect(Bounds other)
    {
        var common = new Bounds(Math.Max(Left, other.Left), Math.Max(Top, other.Top), Math.Min(Right, other.Right), Math.Min(Bottom, other.Bottom));
        return common.IsEmpty ? Empty : common;
    }

    /// <summary>The smallest rectangle that holds both; an empty one adds nothing.</summary>
    public Bounds Union(Bounds other)
    {
        if (IsEmpty) return other;
        if (other.IsEmpty) return this;
        return new Bounds(Math.Min(Left, other.Left), Math.Min(Top, other.Top), Math.Max(Right, other.Right), Math.Max(Bottom, other.Bottom));
    }

    /// <summary>The same rectangle moved by whole pixels.</summary>
    /// <exception cref="OverflowException">An edge would leave the range of 32-bit coordinates.</exception>
    public Bounds Shift(int right, int down) => new(checked(Left + right), checked(Top + down), checked(Right + right), checked(Bottom + down));

    /// <summary>The reflection across a vertical line: [left, right) becomes [2·axis − right, 2·axis − left).</summary>
    /// <param name="doubledAxis">Twice the x of the line, so that half pixels stay whole numbers.</param>
    public Bounds Reflect(int doubledAxis) => new(checked(doubledAxis - Right), Top, checked(doubledAxis - Left), Bottom);

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Width} x {Height} at {Left}, {Top}");
}
