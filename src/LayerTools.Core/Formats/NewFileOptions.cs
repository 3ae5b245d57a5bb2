namespace LayerTools.Formats;

/// <summary>What a blank file is like. Sizes, resolution and mid grey are common practice for figures that will be rigged.</summary>
public sealed record NewFileOptions
{
    /// <summary>Canvas columns, px. An even number puts the centre line between two pixels.</summary>
    public int Width { get; init; } = 5000;

    /// <summary>Canvas rows, px.</summary>
    public int Height { get; init; } = 6000;

    /// <summary>Resolution, pixels per inch.</summary>
    public double Ppi { get; init; } = 600;

    /// <summary>Colour of the backdrop layer, 0xRRGGBB. The default is CIE L* = 50, which is sRGB 119 (CIE 15, IEC 61966-2-1).</summary>
    public int BackdropRgb { get; init; } = 0x777777;

    /// <summary>Whether the file gets empty groups from head to toe.</summary>
    public bool Skeleton { get; init; }
}
