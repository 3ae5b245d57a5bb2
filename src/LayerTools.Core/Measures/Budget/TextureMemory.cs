namespace LayerTools.Measures.Budget;

/// <summary>How much memory pixels take as textures.</summary>
internal static class TextureMemory
{
    /// <summary>Red, green, blue, alpha.</summary>
    public const int PixelBytes = 4;

    public const double Megabyte = 1 << 20;

    public static double InMegabytes(long pixels) => pixels * PixelBytes / Megabyte;

    /// <summary>The pixels of a square page and all smaller ones down to 1 × 1 px.</summary>
    /// <param name="side">Columns and rows, px, a power of two.</param>
    public static long CountWithMipmaps(long side) => ((4 * side * side) - 1) / 3;
}
