using LayerTools.Measures;
using LayerTools.Names;
using LayerTools.Sheets.Parts;
using LayerTools.Sheets.Text;

namespace LayerTools.Sheets.Pages;

/// <summary>What a label says of what its cell is about.</summary>
internal static class SubjectWords
{
    public static string Name(SheetSubject subject) => subject switch
    {
        { IsMissing: true } => $"no {Describe(subject.MissingSide)} part",
        { Layer: { } layer } => CellWords.Name(layer),
        _ => SafeText.Clean(subject.File.Name),
    };

    public static string Path(SheetSubject subject) => subject switch
    {
        { IsMissing: true, Layer: { } opposite } => $"opposite of {CellWords.Path(opposite)}",
        { Layer: { } layer } => CellWords.Path(layer),
        _ => SafeText.Clean(System.IO.Path.GetFileName(System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(subject.File.Path))) ?? string.Empty),
    };

    /// <summary>Size and scale; empty where a part is missing.</summary>
    public static string Size(PageCell cell, SheetOptions options)
    {
        if (cell.Subject.IsMissing) return string.Empty;
        if (cell.Fit is null) return cell.Problem is null ? "0 \u00D7 0 px" : "cannot be read";
        var size = FormattableString.Invariant($"{cell.Subject.Bounds.Width} \u00D7 {cell.Subject.Bounds.Height} px");
        if (cell.Problem is not null) return $"{size} \u00B7 cannot be read";
        var fit = options.View == SheetView.InPlace ? cell.PlacedFit ?? cell.Fit : cell.Fit;
        return $"{size} \u00B7 at {fit.Percent}{(options.Scale == SheetScale.Common && options.View != SheetView.InPlace ? ", as all" : string.Empty)}";
    }

    public static string State(SheetSubject subject)
    {
        if (subject.IsMissing) return "missing";
        if (subject.Layer is not { } layer) return CellWords.Count(subject.File, subject.File.GetLayers());
        if (layer.IsGroup) return $"{CellWords.Count(subject.File, layer.GetLayers())} \u00B7 {CellWords.State(layer)}";
        var progress = subject.Progress switch
        {
            PartProgress.Done => "done",
            PartProgress.Open => "open",
            PartProgress.NotCounted when subject.Role != LayerRole.Part => subject.Role.ToString().ToLowerInvariant(),
            _ => string.Empty,
        };
        var state = CellWords.State(layer);
        return progress.Length == 0 ? state : $"{progress} \u00B7 {state}";
    }

    /// <summary>Why there is nothing to draw.</summary>
    public static string Absence(PageCell cell)
    {
        if (cell.Subject.IsMissing) return $"no {Describe(cell.Subject.MissingSide)} part in this file";
        if (cell.Problem is { } problem) return $"cannot be read: {SafeText.Clean(problem)}";
        return cell.Fit is null && cell.Subject.Layer is { } layer ? CellWords.Absence(layer) : "nothing visible";
    }

    /// <summary>What a sheet without cells says.</summary>
    public static string Nothing(SheetContent content) => content switch
    {
        SheetContent.Group => "There is no group.",
        SheetContent.File => "There is no file.",
        _ => "There is no part that carries pixels.",
    };

    public static StateShape Shape(SheetSubject subject) => subject switch
    {
        { IsMissing: true } => StateShape.Cross,
        { Progress: PartProgress.Done } => StateShape.Disc,
        { Progress: PartProgress.Open } => StateShape.Ring,
        { Progress: PartProgress.Unknown } => StateShape.Square,
        _ => StateShape.Bar,
    };

    private static string Describe(Side side) => side.ToString().ToLowerInvariant();
}
