using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Sheets.Pages;
using SkiaSharp;

namespace LayerTools.Sheets.Rendering;

/// <summary>Writes all pages into one PDF: text stays text, pictures are joined with their ground and packed as JPEG.</summary>
/// <remarks>The library writes to the file itself; it never gets a managed stream, for the reason told at <see cref="Text.FontLibrary"/>.</remarks>
internal sealed class PdfPages : IPageSink
{
    /// <summary>Points of a page for one px of the layout, which is 1/96 inch.</summary>
    private const float PointsPerPixel = 0.75f;

    private const int PictureQuality = 88;
    private readonly string path;
    private readonly bool overwrite;
    private readonly PagePainter painter;
    private readonly AtomicFile file;
    private readonly SKFileWStream stream;
    private readonly SKDocument document;
    private bool isClosed;

    /// <param name="path">Where the document goes.</param>
    /// <param name="overwrite">Whether a file there is replaced.</param>
    /// <param name="painter">Draws the pages.</param>
    /// <param name="heading">Gives the document its title.</param>
    /// <param name="date">When it is made.</param>
    public PdfPages(string path, bool overwrite, PagePainter painter, SheetHeading heading, DateTime date)
    {
        (this.path, this.overwrite, this.painter) = (path, overwrite, painter);
        file = new AtomicFile(path);
        // An empty file first: the system's words about a folder that cannot be written to are better than the library's.
        file.Write(_ => { }, 0);
        stream = new SKFileWStream(file.TemporaryPath);
        document = SKDocument.CreatePdf(stream, new SKDocumentPdfMetadata
        {
            Title = heading.Title,
            Subject = heading.Facts,
            Creator = "LayerTools",
            Creation = date,
            Modified = date,
            RasterDpi = 300,
            EncodingQuality = PictureQuality,
        }) ?? throw new SheetException(LayeredFileErrorKind.LimitExceeded, path, "There is no memory for a PDF.", "Close other programs, or write pictures.");
    }

    public void Add(SheetPage page)
    {
        var canvas = document.BeginPage(page.Width * PointsPerPixel, page.Height * PointsPerPixel);
        painter.Paint(canvas, page, PointsPerPixel, flatten: true);
        document.EndPage();
    }

    public IReadOnlyList<string> Commit()
    {
        document.Close();
        stream.Flush();
        Close();
        file.Commit(overwrite);
        return [path];
    }

    public void Dispose()
    {
        if (!isClosed) document.Abort();
        Close();
        file.Dispose();
    }

    private void Close()
    {
        if (isClosed) return;
        isClosed = true;
        document.Dispose();
        stream.Dispose();
    }
}
