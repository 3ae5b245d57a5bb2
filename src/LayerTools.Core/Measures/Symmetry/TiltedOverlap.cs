namespace LayerTools.Measures.Symmetry;

/// <summary>
/// How well one coverage agrees with the reflection of another across an axis that may lean. It is Σ a·b / (Σ a² + Σ b² − Σ a·b), which is intersection over union where
/// coverage is all or nothing; b is read between pixels by bilinear interpolation.
/// </summary>
internal sealed class TiltedOverlap
{
    private readonly SmoothCoverage one;
    private readonly SmoothCoverage other;

    public TiltedOverlap(MirrorPair pair)
    {
        one = new SmoothCoverage(pair.One);
        other = pair.IsOne ? one : new SmoothCoverage(pair.Other);
        (MiddleX, MiddleY) = ((one.CentreX + other.CentreX) / 2, (one.CentreY + other.CentreY) / 2);
        (ApartX, ApartY) = (one.CentreX - other.CentreX, one.CentreY - other.CentreY);
        Apart = Math.Sqrt((ApartX * ApartX) + (ApartY * ApartY));
        Size = Math.Sqrt(Math.Max(one.Sum, other.Sum));
    }

    /// <summary>The middle between both centres of gravity, px; axes are counted from there.</summary>
    public double MiddleX { get; }

    /// <inheritdoc cref="MiddleX"/>
    public double MiddleY { get; }

    /// <summary>From the centre of the other to that of the one, px.</summary>
    public double ApartX { get; }

    /// <inheritdoc cref="ApartX"/>
    public double ApartY { get; }

    /// <summary>How far the centres are apart, px.</summary>
    public double Apart { get; }

    /// <summary>The side of a square of the same area, px.</summary>
    public double Size { get; }

    /// <summary>The agreement, 0 to 1.</summary>
    /// <param name="angle">Tilt of the axis from upright, radians; above 0 its top leans to the right.</param>
    /// <param name="shift">Where the axis lies to the right of the middle, px, measured across it.</param>
    public double Measure(double angle, double shift)
    {
        var shared = SumProducts(Math.Cos(angle), Math.Sin(angle), shift);
        return shared / (one.SumOfSquares + other.SumOfSquares - shared);
    }

    /// <summary>Reflects p to p − 2((p − middle)·n − shift) n, with n across the axis.</summary>
    private double SumProducts(double acrossX, double acrossY, double shift)
    {
        var (stepX, stepY) = (1 - (2 * acrossX * acrossX), -2 * acrossX * acrossY);
        var (left, width, height) = (one.Bounds.Left + 0.5 - MiddleX, other.Bounds.Width, other.Bounds.Height);
        var target = other.Values;
        var sum = 0.0;
        for (var y = 0; y < one.Bounds.Height; y++)
        {
            var down = one.Bounds.Top + y + 0.5 - MiddleY;
            var distance = 2 * ((left * acrossX) + (down * acrossY) - shift);

            // Half a pixel less, so that whole numbers are the middles of pixels.
            var reflectedX = left - (distance * acrossX) + MiddleX - other.Bounds.Left - 0.5;
            var reflectedY = down - (distance * acrossY) + MiddleY - other.Bounds.Top - 0.5;
            var start = y * one.Bounds.Width;
            for (var x = 0; x < one.Bounds.Width; x++, reflectedX += stepX, reflectedY += stepY)
            {
                var value = one.Values[start + x];
                if (value == 0 || !(reflectedX >= 0 && reflectedY >= 0 && reflectedX < width - 1 && reflectedY < height - 1)) continue;
                var (column, row) = ((int)reflectedX, (int)reflectedY);
                var (right, below) = ((float)(reflectedX - column), (float)(reflectedY - row));
                var at = (row * width) + column;
                var upper = target[at] + (right * (target[at + 1] - target[at]));
                var lower = target[at + width] + (right * (target[at + width + 1] - target[at + width]));
                sum += value * (upper + (below * (lower - upper)));
            }
        }

        return sum;
    }
}
