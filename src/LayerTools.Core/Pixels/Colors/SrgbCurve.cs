namespace LayerTools.Pixels.Colors;

/// <summary>The tone curve of sRGB (IEC 61966-2-1).</summary>
internal static class SrgbCurve
{
    /// <summary>Linear light to the encoded value; what lies outside 0 to 1 is cut off, what is no number becomes 0.</summary>
    public static double Encode(double light)
    {
        if (!(light > 0)) return 0;
        if (light >= 1) return 1;
        return light <= 0.0031308 ? 12.92 * light : (1.055 * Math.Pow(light, 1 / 2.4)) - 0.055;
    }

    /// <summary>The encoded value to linear light.</summary>
    public static double Decode(double encoded) => encoded <= 0.04045 ? encoded / 12.92 : Math.Pow((encoded + 0.055) / 1.055, 2.4);
}
