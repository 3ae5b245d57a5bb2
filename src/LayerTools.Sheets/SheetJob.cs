using LayerTools.Sheets.Pages;
using LayerTools.Sheets.Parts;
using LayerTools.Sheets.Rendering;
using LayerTools.Sheets.Text;

namespace LayerTools.Sheets;

/// <summary>One sheet from layers to files. While a page is set and encoded, the parts of the next are already being drawn.</summary>
internal sealed class SheetJob : IDisposable
{
    /// <summary>Side of a cell where four tiles have to stand side by side in a browser's window, px.</summary>
    private const int NarrowCell = 220;

    private readonly SheetPlan plan;
    private readonly string path;
    private readonly SheetOptions options;
    private readonly SheetFormat format;
    private readonly SheetGrid grid;
    private readonly CellDrawing drawing;
    private readonly IPartPictures pictures;
    private readonly List<string> warnings = [];

    public SheetJob(SheetPlan plan, string path, SheetOptions options, IPartPictures pictures)
    {
        this.plan = plan;
        this.path = path;
        this.pictures = pictures;
        format = SheetFormats.Find(path);
        if (options.PageSize is null && format == SheetFormat.Pdf) options = options with { PageSize = SheetPageSize.A4 };
        // A page in a browser is as long as it needs to be.
        if (format == SheetFormat.Html) options = options with { PageSize = null, Columns = null, CellSize = options.CellSize ?? (options is { Arrangement: SheetArrangement.Pairs, View: SheetView.Both } ? NarrowCell : null) };
        this.options = options;
        grid = SheetGrid.Plan(plan.Subjects.Count, options, path);
        drawing = new CellDrawing(plan.Subjects, grid, options, pictures);
    }

    public void Dispose() => pictures.Dispose();

    public SheetResult Run(CancellationToken cancellation)
    {
        var paths = PagePaths.List(path, grid.PageCount);
        PagePaths.EnsureFree(paths, options.Force);
        if (PagePaths.FindLeftover(path, grid.PageCount) is { } leftover) warnings.Add($"{leftover} is not part of this sheet: it was there before.");
        var heading = HeadingTemplate.Fill(options.Title, plan.Name, options.Date ?? DateTime.Today, plan.Canvas, plan.Counts, SheetNotes.Describe(options, grid, drawing));
        using var fonts = new FontLibrary(options.ListFonts);
        using var shaper = new TextShaper(fonts);
        using var output = CreateOutput(paths, heading, shaper);
        if (drawing.PrepareFigure(cancellation) is { } problem) warnings.Add($"The figure around the parts cannot be drawn: {problem}");
        var next = DrawAsync(0, cancellation);
        try
        {
            for (var page = 0; page < grid.PageCount; page++)
            {
                var cells = next.GetAwaiter().GetResult();
                next = page + 1 < grid.PageCount ? DrawAsync(page + 1, cancellation) : next;
                warnings.AddRange(cells.Where(cell => cell.Problem is not null).Select(cell => $"'{SubjectWords.Path(cell.Subject)}' cannot be read: {cell.Problem}"));
                output.Add(page, cells);
                cancellation.ThrowIfCancellationRequested();
            }
        }
        finally
        {
            // The pictures must not be closed under a page that is still being drawn.
            ((IAsyncResult)next).AsyncWaitHandle.WaitOne();
        }

        if (fonts.FindMissing() is { } missing) warnings.Add(missing);
        return new SheetResult(output.Commit(), plan.Subjects.Count(subject => !subject.IsMissing), format == SheetFormat.Html ? 1 : grid.PageCount, warnings);
    }

    private ISheetOutput CreateOutput(IReadOnlyList<string> paths, SheetHeading heading, TextShaper shaper)
    {
        if (format == SheetFormat.Html) return new HtmlSheet(path, options, grid, heading);
        var painter = new PagePainter(shaper);
        IPageSink sink = format == SheetFormat.Pdf
            ? new PdfPages(path, options.Force, painter, heading, options.Date ?? DateTime.Now)
            : new PicturePages(paths, options.Force, painter, grid.Density);
        return new PagedOutput(new PageComposer(grid, options, shaper), heading, sink);
    }

    private Task<PageCell[]> DrawAsync(int page, CancellationToken cancellation) => Task.Run(() => drawing.Draw(page, cancellation), CancellationToken.None);
}
