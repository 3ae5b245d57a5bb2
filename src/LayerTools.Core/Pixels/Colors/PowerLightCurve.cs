namespace LayerTools.Pixels.Colors;

/// <summary>A profile's curve of parameters (ICC.1, 'parametricCurveType'): (a x + b)^g + e from <c>d</c> on, c x + f below.</summary>
internal sealed class PowerLightCurve(double g, double a, double b, double c, double d, double e, double f) : LightCurve
{
    public override double Decode(double encoded)
    {
        var light = encoded >= d ? Math.Pow(Math.Max(0, (a * encoded) + b), g) + e : (c * encoded) + f;
        return Math.Max(0, Math.Min(1, light));
    }

    public override double Encode(double light)
    {
        var knee = d > 0 ? Math.Pow(Math.Max(0, (a * d) + b), g) + e : double.NegativeInfinity;
        var encoded = light >= knee ? (Math.Pow(Math.Max(0, light - e), 1 / g) - b) / a : c == 0 ? d : (light - f) / c;
        return Math.Max(0, Math.Min(1, encoded));
    }
}
