using LayerTools.Checks;
using LayerTools.Deliveries;
using LayerTools.Errors;
using LayerTools.Measures;
using LayerTools.Measures.Budget;
using LayerTools.Measures.Cover;
using LayerTools.Measures.Detail;
using LayerTools.Measures.Symmetry;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;
using LayerTools.Sheets.Pages;
using LayerTools.Sheets.Parts;

namespace LayerTools.Sheets.Reports;

/// <summary>Works out what a report says of one file. Trouble with one thing lets the others be said.</summary>
internal sealed class FileReader(LayerFile file, LayerFile? before, ReportOptions options, Action<int, int>? progress, CancellationToken cancellation)
{
    /// <summary>Sides of pictures, px. They are shown at half to all of this, so that they are sharp on fine screens too.</summary>
    public const int PartSide = 80;

    public const int FigureSide = 144;

    private const int OtherSteps = 3;

    private static readonly FramingKind[] Framings = [FramingKind.Figure, FramingKind.Bust, FramingKind.Face];

    private readonly List<string> problems = [];
    private readonly List<LayeredFileException> errors = [];
    private readonly Dictionary<Layer, ReportPicture> pictures = [];
    private readonly Dictionary<Layer, string> unreadable = [];
    private int done;
    private int steps;

    public FileReading Read()
    {
        var parts = SheetParts.Select(file.GetLayers());
        steps = OtherSteps + parts.Count + options.Measures.Count + (before is null ? 0 : 1);
        var picture = Try("The figure cannot be shown.", DrawFigure);
        Step();
        DrawParts(parts);
        var statuses = Try("How far the parts are cannot be told.", () => new StatusReader(options.Status).Read(file));
        Step();
        var findings = Try("The file could not be checked, so there may be more to find.", () => LayerFileChecker.Check(file, options.Profile, null, cancellation));
        Step();
        var changes = before is null ? null : Try("What changed since the delivery before could not be told.", () => DeliveryComparer.Compare(before, file, cancellation));
        if (before is not null) Step();
        return new FileReading(file)
        {
            Picture = picture,
            Pictures = pictures,
            Unreadable = unreadable,
            Statuses = statuses,
            Sum = statuses is null ? null : Sum(statuses),
            Findings = findings,
            Changes = changes,
            Symmetry = Measure(ReportMeasure.Symmetry, "The symmetry could not be measured.", () => new SymmetryReader().Read(file, null, cancellation)),
            Cover = Measure(ReportMeasure.Cover, "How parts cover each other could not be measured.", () => FigureCover.Measure(file, file.GetLayers(), null, cancellation).Parts),
            Detail = Measure(ReportMeasure.Detail, "The detail could not be measured.",
                () => new DetailReader(options.Profile, options.Profile.Screens).Read(file, Framings, problems.Add, cancellation)),
            Budget = Measure(ReportMeasure.Budget, "The textures could not be planned.", () => TexturePages.Pack(file, null, options.Profile.Textures, cancellation).Sum()),
            NotDrawn = CompositorSupport.FindNotDrawn(file),
            Problems = problems,
            Errors = errors,
        };
    }

    private static StatusSummary? Sum(IReadOnlyList<LayerStatus> statuses)
    {
        var sums = new StatusSums(StatusGrouping.File);
        foreach (var status in statuses) sums.Add(status);
        return sums.Summarize() is [var sum] ? sum : null;
    }

    private ReportPicture? DrawFigure()
    {
        using var reader = new PixelReader(file);
        var raster = new Compositor(file, reader, new CompositeOptions { Area = new Bounds(0, 0, file.Width, file.Height), Cancellation = cancellation }).RenderRaster(FigureSide, FigureSide);
        return IsBlank(raster) ? null : ReportPicture.Encode(raster);
    }

    private void DrawParts(IReadOnlyList<Layer> parts)
    {
        using var reader = new LayerPictures(file);
        foreach (var part in parts)
        {
            cancellation.ThrowIfCancellationRequested();
            if (!part.Bounds.IsEmpty) DrawPart(reader, part);
            Step();
        }
    }

    private void DrawPart(LayerPictures reader, Layer part)
    {
        try
        {
            var fit = PartFit.Into(part.Bounds, PartSide);
            var raster = reader.Draw(part, fit.Width, fit.Height, cancellation);
            if (!IsBlank(raster)) pictures.Add(part, ReportPicture.Encode(raster));
        }
        catch (LayeredFileException error)
        {
            unreadable.Add(part, Problem.Describe(error));
            Note(error);
        }
    }

    private T? Measure<T>(ReportMeasure measure, string trouble, Func<T> work)
        where T : class
    {
        if (!options.Measures.Contains(measure)) return null;
        var result = Try(trouble, work);
        Step();
        return result;
    }

    private T? Try<T>(string trouble, Func<T?> work)
        where T : class
    {
        cancellation.ThrowIfCancellationRequested();
        try
        {
            return work();
        }
        catch (LayeredFileException error)
        {
            problems.Add($"{trouble} {Problem.Describe(error)}");
            Note(error);
            return null;
        }
    }

    /// <summary>One damaged channel stops the pictures, the status and the checks; once is enough.</summary>
    private void Note(LayeredFileException error)
    {
        if (errors.TrueForAll(known => known.Message != error.Message)) errors.Add(error);
    }

    private void Step() => progress?.Invoke(++done, steps);

    private static bool IsBlank(Raster raster)
    {
        for (var i = 3; i < raster.Pixels.Length; i += 4)
        {
            if (raster.Pixels[i] != 0) return false;
        }

        return true;
    }
}
