using System.Runtime.InteropServices;
using LayerTools.Errors;
using LayerTools.Pixels;
using SkiaSharp;

namespace LayerTools.Sheets.Rendering;

/// <summary>Packs small pictures as WebP, transparency included.</summary>
internal static class WebpPicture
{
    private static readonly SKWebpEncoderOptions Encoding = new(SKWebpEncoderCompression.Lossy, 86);

    /// <param name="picture">The picture.</param>
    /// <param name="path">The file it goes into, for errors.</param>
    public static string EncodeBase64(Raster picture, string path)
    {
        var pinned = GCHandle.Alloc(picture.Pixels, GCHandleType.Pinned);
        try
        {
            using var pixels = new SKPixmap(new SKImageInfo(picture.Width, picture.Height, SKColorType.Rgba8888, SKAlphaType.Unpremul), pinned.AddrOfPinnedObject());
            using var data = pixels.Encode(Encoding)
                ?? throw new SheetException(LayeredFileErrorKind.LimitExceeded, path, FormattableString.Invariant($"There is no memory for a picture of {picture.Width} x {picture.Height} px."), "Use smaller cells.");
            return Convert.ToBase64String(data.ToArray());
        }
        finally
        {
            pinned.Free();
        }
    }
}
