using System.Runtime.InteropServices;
using LayerTools.Formats;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Advanced;
using SixLabors.ImageSharp.Formats.Png;
using SixLabors.ImageSharp.Metadata;
using SixLabors.ImageSharp.PixelFormats;

namespace LayerTools.Images;

/// <summary>A picture that is filled row by row and then written as PNG: 8-bit RGBA, at a fast level. Takes 4 bytes of memory a pixel, see <see cref="ReadLimits.PictureMegapixels"/>.</summary>
internal sealed class PngPicture : IDisposable
{
    /// <summary>Measured on the parts of a figure: the usual level takes several times as long and saves little.</summary>
    private static readonly PngEncoder Encoder = new()
    {
        ColorType = PngColorType.RgbWithAlpha,
        BitDepth = PngBitDepth.Bit8,
        CompressionLevel = PngCompressionLevel.Level1,
        FilterMethod = PngFilterMethod.Sub,
    };

    private readonly Image<Rgba32> image;
    private int row;

    /// <param name="width">Columns, px, at least 1.</param>
    /// <param name="height">Rows, px, at least 1.</param>
    /// <param name="ppi">Resolution, pixels per inch, or null.</param>
    public PngPicture(int width, int height, double? ppi)
    {
        image = new Image<Rgba32>(width, height);
        if (ppi is { } resolution)
        {
            image.Metadata.ResolutionUnits = PixelResolutionUnit.PixelsPerInch;
            (image.Metadata.HorizontalResolution, image.Metadata.VerticalResolution) = (resolution, resolution);
        }
    }

    /// <summary>Takes the next row.</summary>
    /// <param name="pixels">R, G, B, A for each pixel, not premultiplied.</param>
    public void WriteRow(ReadOnlySpan<byte> pixels) => MemoryMarshal.Cast<byte, Rgba32>(pixels).CopyTo(image.DangerousGetPixelRowMemory(row++).Span);

    /// <summary>Writes the picture; the stream stays open.</summary>
    public void Save(Stream target) => image.Save(target, Encoder);

    public void Dispose() => image.Dispose();
}
