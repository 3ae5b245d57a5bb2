using LayerTools.Errors;
using LayerTools.Sheets.Pages;
using SkiaSharp;

namespace LayerTools.Sheets.Rendering;

/// <summary>Writes each page as a PNG file of its own: sheet.png, sheet-2.png, sheet-3.png ...</summary>
internal sealed class PngPages : IPageSink
{
    // Measured on a page of 5.9 MP: 45 ms and 0.90 MB; all filters at level 6 take 195 ms for 0.69 MB, no other encoder at hand is quicker.
    private static readonly SKPngEncoderOptions Encoding = new(SKPngEncoderFilterFlags.Up, 1);
    private readonly IReadOnlyList<string> paths;
    private readonly bool overwrite;
    private readonly PagePainter painter;
    private readonly List<string> temporaries = [];

    /// <param name="paths">Where the pages go.</param>
    /// <param name="overwrite">Whether files there are replaced.</param>
    /// <param name="painter">Draws the pages.</param>
    public PngPages(IReadOnlyList<string> paths, bool overwrite, PagePainter painter)
    {
        this.paths = paths;
        this.overwrite = overwrite;
        this.painter = painter;
    }

    public void Add(SheetPage page)
    {
        var info = new SKImageInfo(page.Width, page.Height, SKColorType.Rgba8888, SKAlphaType.Opaque, SKColorSpace.CreateSrgb());
        using var surface = SKSurface.Create(info) ?? throw OutOfMemory(page);
        painter.Paint(surface.Canvas, page);
        using var pixels = surface.PeekPixels();
        using var png = pixels.Encode(Encoding) ?? throw OutOfMemory(page);
        var path = paths[temporaries.Count];
        FileAccessErrors.Wrap(path, () => Write(png, path));
    }

    public IReadOnlyList<string> Commit()
    {
        while (temporaries.Count > 0)
        {
            var done = paths.Count - temporaries.Count;
            FileAccessErrors.Wrap(paths[done], () => Place(temporaries[0], paths[done]));
            temporaries.RemoveAt(0);
        }

        return paths;
    }

    public void Dispose()
    {
        foreach (var temporary in temporaries) File.Delete(temporary);
        temporaries.Clear();
    }

    private bool Write(SKData png, string path)
    {
        var folder = Path.GetDirectoryName(path)!;
        FileAccessErrors.MakeFolderOf(path);
        var temporary = Path.Combine(folder, $".{Path.GetFileName(path)}.{Guid.NewGuid():N}.tmp");
        using var stream = new FileStream(temporary, FileMode.CreateNew, FileAccess.Write, FileShare.None, 1 << 16);
        temporaries.Add(temporary);
        png.SaveTo(stream);
        stream.Flush(flushToDisk: true);
        return true;
    }

    private bool Place(string temporary, string path)
    {
        if (overwrite && File.Exists(path)) File.Replace(temporary, path, null);
        else File.Move(temporary, path);
        return true;
    }

    private SheetException OutOfMemory(SheetPage page) => new(LayeredFileErrorKind.LimitExceeded, paths[temporaries.Count],
        FormattableString.Invariant($"There is no memory for a page of {page.Width} x {page.Height} px."), "Use smaller cells or fewer columns.");
}
