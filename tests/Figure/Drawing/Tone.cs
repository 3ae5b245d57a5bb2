using SkiaSharp;

namespace LayerTools.Figure.Drawing;

/// <summary>A colour with the light, shadow and line that go with it.</summary>
/// <param name="Base">The colour itself.</param>
/// <param name="Shadow">What its shadow leans to; cool where nothing is said.</param>
internal readonly record struct Tone(SKColor Base, SKColor? Shadow = null)
{
    private static readonly SKColor Warm = new(0xFF, 0xF1, 0xD8);
    private static readonly SKColor Cool = new(0x3A, 0x2E, 0x5C);
    private static readonly SKColor Ink = new(0x24, 0x1A, 0x2C);

    public static Tone Of(string hex, string? shadow = null) => new(SKColor.Parse(hex), shadow is null ? null : SKColor.Parse(shadow));

    /// <summary>Where light falls: warmer and brighter.</summary>
    public SKColor Light => Mix(Base, Warm, 0.32f);

    /// <summary>Where it does not: cooler and darker.</summary>
    public SKColor Shade => Mix(Base, Shadow ?? Cool, 0.45f);

    /// <summary>Its line art.</summary>
    public SKColor Line => Mix(Base, Ink, 0.76f);

    public static SKColor Mix(SKColor one, SKColor other, float part) => new(
        Mix(one.Red, other.Red, part), Mix(one.Green, other.Green, part), Mix(one.Blue, other.Blue, part));

    private static byte Mix(byte one, byte other, float part) => (byte)MathF.Round(one + (other - one) * part);
}
