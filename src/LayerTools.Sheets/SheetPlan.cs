using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Sheets.Pages;
using LayerTools.Sheets.Parts;

namespace LayerTools.Sheets;

/// <summary>What a sheet shows, before anything is drawn.</summary>
/// <param name="Subjects">What the cells are about, in order.</param>
/// <param name="Name">The file's name, or what stands for several.</param>
/// <param name="Canvas">The canvas in words; empty where there are several.</param>
/// <param name="Counts">What is counted, in words.</param>
internal sealed record SheetPlan(IReadOnlyList<SheetSubject> Subjects, string Name, string Canvas, string Counts)
{
    public static SheetPlan OfLayers(LayerFile file, IReadOnlyList<Layer> layers, SheetOptions options)
    {
        if (options is null) throw new ArgumentNullException(nameof(options));
        var progress = new ProgressReader(file);
        var parts = SheetParts.Select(layers);
        IReadOnlyList<SheetSubject> subjects = options.Content == SheetContent.Group
            ? [.. layers.Where(layer => layer.IsGroup).Distinct().Select(group => OfGroup(file, group, progress))]
            : [.. parts.Select(part => SheetSubject.ForPart(part, progress))];
        var counts = options.Content == SheetContent.Group
            ? Count(subjects.Count, "group")
            : CellWords.Count(parts, SheetParts.Select(file.GetLayers()).Count, [.. subjects.Select(subject => subject.Progress)]);
        var arranged = SubjectOrder.Arrange(subjects, options.Arrangement);
        var missing = arranged.Count(subject => subject.IsMissing);
        if (missing > 0) counts += FormattableString.Invariant($" \u00B7 {missing} without an opposite");
        return new SheetPlan(arranged, file.Name, CellWords.Canvas(file), counts);
    }

    public static SheetPlan OfFiles(IReadOnlyList<LayerFile> files, SheetOptions options)
    {
        var subjects = SubjectOrder.Arrange([.. files.Select(SheetSubject.ForFile)], options.Arrangement);
        var parts = files.Sum(file => SheetParts.Select(file.GetLayers()).Count);
        return new SheetPlan(subjects, files.Count == 1 ? files[0].Name : Count(files.Count, "file"), string.Empty, $"{Count(files.Count, "file")} \u00B7 {Count(parts, "part")}");
    }

    private static SheetSubject OfGroup(LayerFile file, Layer group, ProgressReader progress)
    {
        var subject = new SheetSubject(file, group, Bounds.Empty, progress.Read(SheetParts.Select(group.GetLayers())), progress.GetRole(group));
        try
        {
            return subject with { Bounds = CompositePictures.FindReach(file, group) };
        }
        catch (LayeredFileException error) when (error.Kind is not (LayeredFileErrorKind.Unavailable or LayeredFileErrorKind.SourceChanged))
        {
            return subject with { Problem = error.Problem };
        }
    }

    private static string Count(int number, string noun) => FormattableString.Invariant($"{number} {noun}{(number == 1 ? string.Empty : "s")}");
}
