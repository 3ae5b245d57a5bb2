namespace LayerTools.Measures.Symmetry;

/// <summary>Compares the colours of one part with those of the reflection of another.</summary>
internal static class ColorMirror
{
    /// <summary>Where more pixels are shared, only every second, third ... column and row is looked at.</summary>
    private const double MostPixels = 1 << 18;

    /// <summary>The mean ΔE00, each pixel weighed by the smaller of both opacities; null if no pixel is shared.</summary>
    /// <param name="one">A part.</param>
    /// <param name="other">The part that is reflected; may be the same.</param>
    /// <param name="doubledAxis">Twice the x of the axis.</param>
    public static double? Measure(PaintedPart one, PaintedPart other, int doubledAxis)
    {
        var reflected = other.Bounds.Reflect(doubledAxis);
        var shared = one.Bounds.Intersect(reflected);

        // Of one part the right half says the same as the left.
        var isOne = ReferenceEquals(one, other);
        var right = isOne ? Math.Min(shared.Right, (doubledAxis + 1) >> 1) : shared.Right;
        var step = Math.Max(1, (int)Math.Ceiling(Math.Sqrt((double)shared.Height * (right - shared.Left) / MostPixels)));
        var known = new ColorPairs();
        double sum = 0, weights = 0;
        for (var y = shared.Top + (step / 2); y < shared.Bottom; y += step)
        {
            var row = one.Row(y);
            var opposite = other.Row(y);
            for (var x = shared.Left + (step / 2); x < right; x += step)
            {
                var pixel = row.Slice(4 * (x - one.Bounds.Left), 4);
                var mirrored = opposite.Slice(4 * (doubledAxis - 1 - x - other.Bounds.Left), 4);
                double weight = Math.Min(pixel[3], mirrored[3]);
                if (weight == 0) continue;

                // In the middle column of an odd width a pixel is its own reflection.
                if (isOne && 2 * x == doubledAxis - 1) weight /= 2;
                sum += weight * known.Measure(pixel, mirrored);
                weights += weight;
            }
        }

        return weights > 0 ? sum / weights : null;
    }
}
