namespace LayerTools.Pixels.Compositing.Fills;

/// <summary>
/// The curve through the stops of a gradient. Between two stops it is a cubic whose slope at each is half the difference of its neighbours
/// (a Catmull-Rom spline; an end counts as its own neighbour), cut off at the two stops' values; mixed by smoothness with the straight line.
/// Measured on real files whose fills are stored as pixels too, all of smoothness 1; how less of it works, and the midpoints, is from memory.
/// </summary>
internal static class StopCurve
{
    /// <param name="places">0 to 1, not falling.</param>
    /// <param name="midpoints">0 to 1, each between the stop before and this.</param>
    /// <param name="values">As many.</param>
    /// <param name="smoothness">0 to 1.</param>
    /// <param name="at">Where, 0 to 1.</param>
    public static float Evaluate(ReadOnlySpan<double> places, ReadOnlySpan<double> midpoints, ReadOnlySpan<float> values, double smoothness, double at)
    {
        var last = places.Length - 1;
        if (at < places[0]) return values[0];
        if (at >= places[last]) return values[last];
        var right = 1;
        while (places[right] <= at) right++;

        var (from, to) = (values[right - 1], values[right]);
        var u = Bend((at - places[right - 1]) / (places[right] - places[right - 1]), midpoints[right]);
        var before = values[Math.Max(right - 2, 0)];
        var after = values[Math.Min(right + 1, last)];
        var (squared, cubed) = (u * u, u * u * u);
        var curved = (((2 * cubed) - (3 * squared) + 1) * from) + ((cubed - (2 * squared) + u) * (to - before) / 2)
            + (((3 * squared) - (2 * cubed)) * to) + ((cubed - squared) * (after - from) / 2);
        curved = Math.Max(Math.Min(from, to), Math.Min(Math.Max(from, to), curved));
        return (float)((smoothness * curved) + ((1 - smoothness) * (from + ((to - from) * u))));
    }

    /// <summary>Half of the way is reached at the midpoint; straight before and after.</summary>
    private static double Bend(double u, double midpoint) => u < midpoint ? u / (2 * midpoint) : midpoint >= 1 ? 0.5 : 0.5 + ((u - midpoint) / (2 * (1 - midpoint)));
}
