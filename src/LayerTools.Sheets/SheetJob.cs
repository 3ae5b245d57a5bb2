using System.Runtime.ExceptionServices;
using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Sheets.Pages;
using LayerTools.Sheets.Parts;
using LayerTools.Sheets.Rendering;
using LayerTools.Sheets.Text;

namespace LayerTools.Sheets;

/// <summary>One sheet from layers to files. While a page is set and encoded, the parts of the next are already being drawn.</summary>
internal sealed class SheetJob
{
    private readonly LayerFile file;
    private readonly IReadOnlyList<Layer> parts;
    private readonly string path;
    private readonly SheetOptions options;
    private readonly IPartPictures pictures;
    private readonly SheetGrid grid;
    private readonly List<string> warnings = [];

    public SheetJob(LayerFile file, IReadOnlyList<Layer> layers, string path, SheetOptions options, IPartPictures pictures)
    {
        this.file = file;
        this.path = path;
        this.options = options;
        this.pictures = pictures;
        parts = SheetParts.Select(layers);
        grid = SheetGrid.Plan(parts.Count, options, path);
    }

    public SheetResult Run(CancellationToken cancellation)
    {
        var paths = PagePaths.List(path, grid.PageCount);
        PagePaths.EnsureFree(paths, options.Force);
        if (PagePaths.FindLeftover(path, grid.PageCount) is { } leftover) warnings.Add($"{leftover} is not part of this sheet: it was there before.");

        using var fonts = new FontLibrary(FontFolders.ListFiles);
        using var shaper = new TextShaper(fonts);
        using var sink = new PngPages(paths, options.Force, new PagePainter(shaper));
        var composer = new PageComposer(grid, Palette.For(options.Background), shaper);
        var subtitle = CellWords.Describe(file, parts, SheetParts.Select(file.GetLayers()).Count);
        var next = DrawAsync(0, cancellation);
        try
        {
            for (var page = 0; page < grid.PageCount; page++)
            {
                var cells = next.GetAwaiter().GetResult();
                next = page + 1 < grid.PageCount ? DrawAsync(page + 1, cancellation) : next;
                warnings.AddRange(cells.Where(cell => cell.Problem is not null).Select(cell => $"'{CellWords.Path(cell.Part)}' cannot be read: {cell.Problem}"));
                sink.Add(composer.Compose(page, file.Name, subtitle, cells));
                cancellation.ThrowIfCancellationRequested();
            }
        }
        finally
        {
            // The pictures must not be closed under a page that is still being drawn.
            ((IAsyncResult)next).AsyncWaitHandle.WaitOne();
        }

        return new SheetResult(sink.Commit(), parts.Count, warnings);
    }

    private Task<PageCell[]> DrawAsync(int page, CancellationToken cancellation) => Task.Run(() => Draw(page, cancellation), CancellationToken.None);

    private PageCell[] Draw(int page, CancellationToken cancellation)
    {
        var cells = new PageCell[grid.GetCount(page)];
        var parallel = new ParallelOptions { CancellationToken = cancellation, MaxDegreeOfParallelism = options.Parallelism ?? Environment.ProcessorCount };
        try
        {
            Parallel.For(0, cells.Length, parallel, i => cells[i] = Draw(parts[grid.GetFirst(page) + i], cancellation));
        }
        catch (AggregateException errors) when (errors.InnerException is LayeredFileException error)
        {
            // Each part that was being drawn says the same of the file; once is enough.
            ExceptionDispatchInfo.Capture(error).Throw();
        }

        return cells;
    }

    private PageCell Draw(Layer part, CancellationToken cancellation)
    {
        if (part.Bounds.IsEmpty) return new PageCell(part, null, null, null);
        var fit = PartFit.Into(part.Bounds, grid.CellSize - 2 * SheetMetrics.GetInset(grid.CellSize));
        try
        {
            var picture = pictures.Draw(part, fit.Width, fit.Height, cancellation);
            return new PageCell(part, fit, IsBlank(picture.Pixels) ? null : picture, null);
        }
        catch (LayeredFileException error) when (error.Kind is not (LayeredFileErrorKind.Unavailable or LayeredFileErrorKind.SourceChanged))
        {
            return new PageCell(part, fit, null, error.Problem);
        }
    }

    private static bool IsBlank(byte[] pixels)
    {
        for (var i = 3; i < pixels.Length; i += 4)
        {
            if (pixels[i] != 0) return false;
        }

        return true;
    }
}
