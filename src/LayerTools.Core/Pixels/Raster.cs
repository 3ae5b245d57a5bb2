namespace LayerTools.Pixels;

/// <summary>A picture in memory: rows of RGBA, 8 bits each, not premultiplied.</summary>
public sealed class Raster
{
    /// <summary>A transparent picture.</summary>
    /// <param name="width">Columns, px, 0 or more.</param>
    /// <param name="height">Rows, px, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A side is negative or the picture needs more than 2 GB.</exception>
    public Raster(int width, int height)
    {
        if (width < 0) throw new ArgumentOutOfRangeException(nameof(width));
        if (height < 0 || 4L * width * height > int.MaxValue) throw new ArgumentOutOfRangeException(nameof(height));
        Width = width;
        Height = height;
        Pixels = new byte[4 * width * height];
    }

    /// <summary>Columns, px.</summary>
    public int Width { get; }

    /// <summary>Rows, px.</summary>
    public int Height { get; }

    /// <summary>Width × Height × 4 bytes: R, G, B, A, rows from the top without padding.</summary>
    public byte[] Pixels { get; }

    /// <summary>One row, Width × 4 bytes.</summary>
    public Span<byte> Row(int y) => Pixels.AsSpan(4 * Width * y, 4 * Width);
}
