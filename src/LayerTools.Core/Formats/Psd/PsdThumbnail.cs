using LayerTools.Pixels;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.PixelFormats;

namespace LayerTools.Formats.Psd;

/// <summary>The thumbnail resource: a header of 28 bytes and a JPEG picture (PSD File Formats Specification, 'Thumbnail resource format').</summary>
internal static class PsdThumbnail
{
    public const int LongestSide = 160;
    private const int JpegFormat = 1;
    private const int BitsPerPixel = 24;

    public static byte[] Encode(Raster picture)
    {
        var onWhite = new byte[picture.Width * picture.Height * 3];
        for (int from = 0, to = 0; from < picture.Pixels.Length; from += 4, to += 3)
        {
            var alpha = picture.Pixels[from + 3];
            for (var i = 0; i < 3; i++) onWhite[to + i] = (byte)(((picture.Pixels[from + i] * alpha) + (255 * (255 - alpha)) + 127) / 255);
        }

        using var image = Image.LoadPixelData<Rgb24>(onWhite, picture.Width, picture.Height);
        using var jpeg = new MemoryStream();
        image.Save(jpeg, new JpegEncoder { Quality = 85 });

        // format 4, width 4, height 4, bytes of a padded row 4, bytes unpacked 4, bytes packed 4, bits 2, planes 2
        var rowBytes = ((picture.Width * BitsPerPixel) + 31) / 32 * 4;
        var output = new PsdOutput();
        output.WriteInt32(JpegFormat);
        output.WriteInt32(picture.Width);
        output.WriteInt32(picture.Height);
        output.WriteInt32(rowBytes);
        output.WriteInt32(rowBytes * picture.Height);
        output.WriteInt32((int)jpeg.Length);
        output.WriteUInt16(BitsPerPixel);
        output.WriteUInt16(1);
        output.Write(jpeg.ToArray());
        return output.ToArray();
    }
}
