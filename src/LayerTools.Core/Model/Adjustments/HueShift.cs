namespace LayerTools.Model.Adjustments;

/// <summary>A shift in hue (degrees), saturation and lightness (−100 to 100).</summary>
internal readonly record struct HueShift(int Hue, int Saturation, int Lightness)
{
    public bool IsNone => this == default;
}
