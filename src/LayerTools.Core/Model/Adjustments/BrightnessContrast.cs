namespace LayerTools.Model.Adjustments;

/// <summary>Brighter or darker, more or less contrast.</summary>
/// <param name="Brightness">−150 to 150; −100 to 100 in the straight form.</param>
/// <param name="Contrast">−50 to 100; −100 to 100 in the straight form.</param>
/// <param name="Middle">The level around which contrast grows, 0 to 255.</param>
/// <param name="IsStraight">The older form, whose tone curve is a straight line that is cut off at black and white.</param>
internal sealed record BrightnessContrast(int Brightness, int Contrast, int Middle, bool IsStraight) : Adjustment("brightness and contrast");
