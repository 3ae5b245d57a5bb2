using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Sheets.Pages;
using SkiaSharp;

namespace LayerTools.Sheets.Rendering;

/// <summary>Writes each page as a picture file of its own: sheet.png, sheet-2.png, sheet-3.png ...</summary>
internal sealed class PicturePages : IPageSink
{
    private const int JpegQuality = 92;
    private const int WebpQuality = 90;

    // Measured on a page of 5.9 MP: 45 ms and 0.90 MB; all filters at level 6 take 195 ms for 0.69 MB, no other encoder at hand is quicker.
    private static readonly SKPngEncoderOptions PngEncoding = new(SKPngEncoderFilterFlags.Up, 1);

    // Text needs colours at full resolution.
    private static readonly SKJpegEncoderOptions JpegEncoding = new(JpegQuality, SKJpegEncoderDownsample.Downsample444, SKJpegEncoderAlphaOption.Ignore);

    private static readonly SKWebpEncoderOptions WebpEncoding = new(SKWebpEncoderCompression.Lossy, WebpQuality);

    private readonly IReadOnlyList<string> paths;
    private readonly bool overwrite;
    private readonly PagePainter painter;
    private readonly int density;
    private readonly List<AtomicFile> files = [];

    /// <param name="paths">Where the pages go.</param>
    /// <param name="overwrite">Whether files there are replaced.</param>
    /// <param name="painter">Draws the pages.</param>
    /// <param name="density">Pixels for each px of the layout.</param>
    public PicturePages(IReadOnlyList<string> paths, bool overwrite, PagePainter painter, int density = 1)
    {
        this.paths = paths;
        this.overwrite = overwrite;
        this.painter = painter;
        this.density = density;
    }

    public void Add(SheetPage page)
    {
        var info = new SKImageInfo(page.Width * density, page.Height * density, SKColorType.Rgba8888, SKAlphaType.Opaque, SKColorSpace.CreateSrgb());
        using var surface = SKSurface.Create(info) ?? throw OutOfMemory(page);
        painter.Paint(surface.Canvas, page, density);
        using var pixels = surface.PeekPixels();
        var path = paths[files.Count];
        using var data = Encode(pixels, path) ?? throw OutOfMemory(page);
        var file = new AtomicFile(path);
        files.Add(file);
        file.Write(stream => data.SaveTo(stream), data.Size);
    }

    public IReadOnlyList<string> Commit()
    {
        foreach (var file in files) file.Commit(overwrite);
        return paths;
    }

    public void Dispose()
    {
        foreach (var file in files) file.Dispose();
    }

    private static SKData? Encode(SKPixmap pixels, string path) => SheetFormats.Find(path) switch
    {
        SheetFormat.Jpeg => pixels.Encode(JpegEncoding),
        SheetFormat.Webp => pixels.Encode(WebpEncoding),
        _ => pixels.Encode(PngEncoding),
    };

    private SheetException OutOfMemory(SheetPage page) => new(LayeredFileErrorKind.LimitExceeded, paths[files.Count],
        FormattableString.Invariant($"There is no memory for a page of {page.Width * density} x {page.Height * density} px."), "Use smaller cells or fewer columns.");
}
