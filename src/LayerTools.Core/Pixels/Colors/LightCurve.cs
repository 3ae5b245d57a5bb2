namespace LayerTools.Pixels.Colors;

/// <summary>How encoded values of a channel stand for light; both 0 to 1.</summary>
internal abstract class LightCurve
{
    public static LightCurve Srgb { get; } = new SrgbLightCurve();

    public abstract double Decode(double encoded);

    public abstract double Encode(double light);

    private sealed class SrgbLightCurve : LightCurve
    {
        public override double Decode(double encoded) => SrgbCurve.Decode(encoded);

        public override double Encode(double light) => SrgbCurve.Encode(light);
    }
}
