namespace LayerTools.Pixels.Colors;

/// <summary>How encoded values of a channel stand for light; both 0 to 1.</summary>
internal abstract class LightCurve
{
    /// <summary>The power of 2.2.</summary>
    public static LightCurve Power { get; } = new PowerLightCurve(2.2, 1, 0, 0, 0, 0, 0);

    public abstract double Decode(double encoded);

    public abstract double Encode(double light);
}
