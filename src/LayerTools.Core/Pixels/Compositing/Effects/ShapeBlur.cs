namespace LayerTools.Pixels.Compositing.Effects;

/// <summary>
/// Softens a shape: in each direction the mean of as many pixels as the size says, taken twice, which reaches just that size beyond the
/// edge. (Measured in a real file: its shade and its halo agree to rounding with this, and with no Gaussian.)
/// </summary>
internal static class ShapeBlur
{
    /// <summary>The softened shape, over the same rectangle.</summary>
    /// <param name="shape">The shape.</param>
    /// <param name="size">px; rounded to whole ones, below 2 nothing happens.</param>
    /// <param name="outside">The value of all pixels around the rectangle.</param>
    public static ShapePlane Blur(ShapePlane shape, double size, ushort outside = 0)
    {
        var window = (int)Math.Min(Math.Round(size, MidpointRounding.AwayFromZero), short.MaxValue);
        if (window < 2) return shape;
        var blurred = new ShapePlane(shape.Bounds);
        Parallel.For(0, shape.Height, () => new int[2 * shape.Width], (y, _, scratch) => BlurLine(shape.Samples, blurred.Samples, y * shape.Width, 1, shape.Width, window, outside, scratch), _ => { });
        Parallel.For(0, shape.Width, () => new int[2 * shape.Height], (x, _, scratch) => BlurLine(blurred.Samples, blurred.Samples, x, shape.Width, shape.Height, window, outside, scratch), _ => { });
        return blurred;
    }

    /// <summary>The second mean reaches as much farther back as the first reached forward, so that even sizes stay centred.</summary>
    private static int[] BlurLine(ushort[] from, ushort[] to, int start, int step, int length, int window, ushort outside, int[] scratch)
    {
        var line = scratch.AsSpan(0, length);
        var once = scratch.AsSpan(length, length);
        for (var i = 0; i < length; i++) line[i] = from[start + (i * step)];
        var back = (window - 1) / 2;
        Average(line, once, back, window, outside);
        Average(once, line, window - 1 - back, window, outside);
        for (var i = 0; i < length; i++) to[start + (i * step)] = (ushort)line[i];
        return scratch;
    }

    private static void Average(ReadOnlySpan<int> source, Span<int> target, int back, int window, int outside)
    {
        var sum = 0L;
        for (var i = -back; i < window - back; i++) sum += i >= 0 && i < source.Length ? source[i] : outside;
        for (var i = 0; i < source.Length; i++)
        {
            target[i] = (int)((sum + (window / 2)) / window);
            var leaving = i - back;
            var entering = leaving + window;
            sum += (entering < source.Length ? source[entering] : outside) - (leaving >= 0 ? source[leaving] : outside);
        }
    }
}
