namespace LayerTools.Model;

/// <summary>A range of brightness with soft ends, each 0 to 255: nothing below <paramref name="DarkBegin"/> and above <paramref name="LightEnd"/>, all from <paramref name="DarkEnd"/> to <paramref name="LightBegin"/>.</summary>
internal readonly record struct BrightnessLimits(byte DarkBegin, byte DarkEnd, byte LightBegin, byte LightEnd)
{
    public static readonly BrightnessLimits All = new(0, 0, 255, 255);

    public bool IsAll => this == All;
}
