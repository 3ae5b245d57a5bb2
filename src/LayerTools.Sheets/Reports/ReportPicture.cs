using LayerTools.Pixels;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Webp;
using SixLabors.ImageSharp.PixelFormats;

namespace LayerTools.Sheets.Reports;

/// <summary>A small picture inside a page: WebP, as an address that holds its data.</summary>
/// <param name="Width">Columns, px.</param>
/// <param name="Height">Rows, px.</param>
/// <param name="Address">The address.</param>
internal sealed record ReportPicture(int Width, int Height, string Address)
{
    private static readonly WebpEncoder Encoder = new() { FileFormat = WebpFileFormatType.Lossy, Quality = 70, Method = WebpEncodingMethod.Level4, UseAlphaCompression = true };

    public static ReportPicture Encode(Raster raster)
    {
        using var image = Image.LoadPixelData<Rgba32>(raster.Pixels, raster.Width, raster.Height);
        using var bytes = new MemoryStream();
        image.Save(bytes, Encoder);
        return new ReportPicture(raster.Width, raster.Height, $"data:image/webp;base64,{Convert.ToBase64String(bytes.GetBuffer(), 0, (int)bytes.Length)}");
    }

    /// <summary>Writes the picture into a page.</summary>
    /// <param name="html">The page.</param>
    /// <param name="description">What it shows; empty where the words beside it say so.</param>
    public void Write(HtmlWriter html, string description) =>
        html.Markup(FormattableString.Invariant($"<img width=\"{Width}\" height=\"{Height}\"")).Attribute("alt", description).Markup($" src=\"{Address}\">");
}
