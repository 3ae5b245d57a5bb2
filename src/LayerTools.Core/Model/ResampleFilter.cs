namespace LayerTools.Model;

/// <summary>How new pixels are made of old ones.</summary>
public enum ResampleFilter
{
    /// <summary>
    /// Area average: a new pixel is the mean of what it covers, parts of old pixels by their share. Never goes beyond the old values, reaches no farther than the pixel, and at half
    /// size is the mean of four pixels. For making smaller; made larger, pixels become blocks.
    /// </summary>
    Area,

    /// <summary>
    /// The cubic of Catmull and Rom (Keys 1981, a = -0.5) over 4 pixels, made as much wider as the picture becomes smaller. Sharper than the area average and smooth when made larger;
    /// where it would go beyond transparent, opaque, or a colour's range, it is cut off.
    /// </summary>
    CatmullRom,
}
