using System.Runtime.ExceptionServices;
using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Sheets.Pages;
using LayerTools.Sheets.Parts;

namespace LayerTools.Sheets;

/// <summary>Draws the pictures of cells, page by page and several at a time.</summary>
internal sealed class CellDrawing
{
    private readonly IReadOnlyList<SheetSubject> subjects;
    private readonly SheetGrid grid;
    private readonly SheetOptions options;
    private readonly IPartPictures pictures;
    private readonly int roomWidth;
    private readonly int roomHeight;
    private Raster? figure;
    private int done;

    public CellDrawing(IReadOnlyList<SheetSubject> subjects, SheetGrid grid, SheetOptions options, IPartPictures pictures)
    {
        (this.subjects, this.grid, this.options, this.pictures) = (subjects, grid, options, pictures);
        var inset = SheetMetrics.GetInset(Math.Min(grid.TileWidth, grid.TileHeight));
        roomWidth = (grid.TileWidth - (2 * inset)) * grid.Density;
        roomHeight = (grid.TileHeight - (2 * inset)) * grid.Density;
        var scales = subjects.Where(subject => !subject.Bounds.IsEmpty).Select(subject => PartFit.FindScale(subject.Bounds, roomWidth, roomHeight)).ToList();
        if (options.Scale == SheetScale.Common && scales.Count > 0) CommonScale = scales.Min();
    }

    /// <summary>The scale of all; null if each has its own.</summary>
    public double? CommonScale { get; }

    /// <summary>The size of the canvas where parts are shown in place.</summary>
    public PartFit? PlacedFit { get; private set; }

    /// <summary>Draws the figure that parts are shown in, where that is asked for.</summary>
    /// <returns>Why it cannot be drawn, as a sentence; null if it can.</returns>
    public string? PrepareFigure(CancellationToken cancellation)
    {
        if (options.View == SheetView.Alone || subjects.Count == 0) return null;
        var file = subjects[0].File;
        var canvas = new Bounds(0, 0, file.Width, file.Height);
        PlacedFit = PartFit.At(canvas, PartFit.FindScale(canvas, roomWidth, roomHeight), options.Enlarge);
        try
        {
            figure = pictures.DrawFigure(file, new PictureTarget(canvas, PlacedFit.Width, PlacedFit.Height), cancellation);
            return null;
        }
        catch (LayeredFileException error) when (IsOfOnePart(error))
        {
            return error.Problem;
        }
    }

    public PageCell[] Draw(int page, CancellationToken cancellation)
    {
        var cells = new PageCell[grid.GetCount(page)];
        var parallel = new ParallelOptions { CancellationToken = cancellation, MaxDegreeOfParallelism = options.Parallelism ?? Environment.ProcessorCount };
        try
        {
            Parallel.For(0, cells.Length, parallel, i =>
            {
                cells[i] = Draw(subjects[grid.GetFirst(page) + i], cancellation);
                options.Progress?.Invoke(Interlocked.Increment(ref done), subjects.Count);
            });
        }
        catch (AggregateException errors) when (errors.InnerException is LayeredFileException error)
        {
            // Each part that was being drawn says the same of the file; once is enough.
            ExceptionDispatchInfo.Capture(error).Throw();
        }

        return cells;
    }

    private PageCell Draw(SheetSubject subject, CancellationToken cancellation)
    {
        if (subject.Bounds.IsEmpty) return new PageCell(subject, null, null, subject.Problem);
        var fit = PartFit.At(subject.Bounds, CommonScale ?? PartFit.FindScale(subject.Bounds, roomWidth, roomHeight), options.Enlarge);
        var targets = new List<PictureTarget>();
        if (options.View != SheetView.InPlace) targets.Add(new PictureTarget(subject.Bounds, fit.Width, fit.Height));
        if (PlacedFit is not null) targets.Add(new PictureTarget(new Bounds(0, 0, subject.File.Width, subject.File.Height), PlacedFit.Width, PlacedFit.Height));
        try
        {
            var drawn = pictures.Draw(subject, targets, cancellation);
            var alone = options.View == SheetView.InPlace || IsBlank(drawn[0]) ? null : drawn[0];
            var placed = PlacedFit is null ? null : PlacedPicture.Compose(figure, drawn[drawn.Count - 1]);
            return new PageCell(subject, fit, alone, null, placed, PlacedFit);
        }
        catch (LayeredFileException error) when (IsOfOnePart(error))
        {
            return new PageCell(subject, fit, null, error.Problem);
        }
    }

    /// <summary>Whether other parts may still be drawn. A file that is gone or has changed is no use for any.</summary>
    private bool IsOfOnePart(LayeredFileException error) => options.Content == SheetContent.File || error.Kind is not (LayeredFileErrorKind.Unavailable or LayeredFileErrorKind.SourceChanged);

    private static bool IsBlank(Raster picture)
    {
        for (var i = 3; i < picture.Pixels.Length; i += 4)
        {
            if (picture.Pixels[i] != 0) return false;
        }

        return true;
    }
}
