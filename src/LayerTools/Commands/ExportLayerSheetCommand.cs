using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Completion;
using LayerTools.Model;
using LayerTools.Sheets;

namespace LayerTools.Commands;

/// <summary>Writes contact sheets that show every part, group or file.</summary>
[Cmdlet(VerbsData.Export, "LayerSheet", SupportsShouldProcess = true)]
[OutputType(typeof(FileInfo))]
public sealed class ExportLayerSheetCommand : LayerSelectionCommand, IDisposable
{
    private const string OverviewName = "overview.png";
    private readonly SavePlaces places = new();
    private readonly List<LayerFile> overview = [];
    private readonly CancellationTokenSource stopping = new();
    private readonly ThrottledProgress progress;
    private readonly WatchedWork watched;
    private SheetOptions options = new();

    /// <summary>Makes the command.</summary>
    public ExportLayerSheetCommand()
    {
        progress = new ThrottledProgress(this, "Drawing contact sheets");
        watched = new WatchedWork(progress, stopping);
    }

    /// <summary>The file to write, .png, .jpg, .webp, .pdf or .html; or the folder to write a PNG to for each file.</summary>
    [Parameter(Mandatory = true, Position = 0)]
    [ValidateNotNullOrEmpty]
    public string Path { get; set; } = string.Empty;

    /// <summary>What gets a cell.</summary>
    [Parameter]
    public SheetContent Of { get; set; }

    /// <summary>The order of the cells.</summary>
    [Parameter]
    public SheetArrangement Arrange { get; set; }

    /// <summary>How a part is shown.</summary>
    [Parameter]
    public SheetView View { get; set; }

    /// <summary>How large parts are shown.</summary>
    [Parameter]
    public SheetScale Scale { get; set; }

    /// <summary>Enlarges small parts by whole numbers, with hard pixels.</summary>
    [Parameter]
    public SwitchParameter Enlarge { get; set; }

    /// <summary>A4, A3, Letter, Screen, or pixels such as 1600x1200.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    [ArgumentCompleter(typeof(PageSizeCompleter))]
    public string? PageSize { get; set; }

    /// <summary>Lays pages on their long side.</summary>
    [Parameter]
    public SwitchParameter Landscape { get; set; }

    /// <summary>Room around the page: millimetres on paper, px otherwise.</summary>
    [Parameter]
    [ValidateRange(0, SheetOptions.LargestMargin)]
    public int? Margin { get; set; }

    /// <summary>What stands above each page; {File}, {Date}, {Canvas} and {Counts} are filled in.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    public string? Title { get; set; }

    /// <summary>Side of the square that a part is fitted into, px.</summary>
    [Parameter]
    [ValidateRange(SheetOptions.SmallestCell, SheetOptions.LargestCell)]
    public int? CellSize { get; set; }

    /// <summary>Cells side by side; chosen to suit if left out.</summary>
    [Parameter]
    [ValidateRange(1, 1000)]
    public int? Columns { get; set; }

    /// <summary>What the parts stand on: grey, checker, halves, or a colour #rrggbb or #rgb.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    [ArgumentCompleter(typeof(BackgroundCompleter))]
    public string Background { get; set; } = "grey";

    /// <summary>Overwrites files that exist.</summary>
    [Parameter]
    public SwitchParameter Force { get; set; }

    /// <summary>The colour marks of the layers.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    public Mark[]? Mark { get; set; }

    /// <inheritdoc/>
    private protected override Mark[]? ChosenMarks => Mark;

    /// <summary>Frees what stops the drawing; writes nothing.</summary>
    public void Dispose() => stopping.Dispose();

    /// <inheritdoc/>
    protected override void BeginProcessing()
    {
        try
        {
            options = CreateOptions();
        }
        catch (SheetException error)
        {
            ThrowTerminatingError(ErrorRecords.FromCore(error, this));
        }
    }

    /// <inheritdoc/>
    protected override void EndProcessing()
    {
        base.EndProcessing();
        if (overview.Count > 0) Try(Path, ExportOverview);
        progress.Complete();
    }

    /// <inheritdoc/>
    protected override void StopProcessing() => stopping.Cancel();

    /// <inheritdoc/>
    private protected override void ProcessFile(LayerFile file)
    {
        if (Of == SheetContent.File) overview.Add(file);
        else Export(file, Filter.Apply(file.Name, file.GetLayers().ToList()));
    }

    /// <inheritdoc/>
    private protected override void ProcessLayers(IReadOnlyList<Layer> layers)
    {
        foreach (var (file, ofFile) in LayersByFile.Group(layers))
        {
            if (Of == SheetContent.File) overview.Add(file);
            else Try(file, () => Export(file, Filter.Apply(file.Name, ofFile)));
        }
    }

    private SheetOptions CreateOptions()
    {
        var page = PageSize is null ? null : SheetPageSize.Parse(PageSize);
        if (Landscape) page = (page ?? SheetPageSize.A4).Turn(landscape: true);
        if (Of == SheetContent.File && View != SheetView.Alone)
        {
            throw new SheetException(Errors.LayeredFileErrorKind.NotSupported, null, "A whole file has no place in a figure.", "Leave -View out, or show parts or groups.");
        }

        return new SheetOptions
        {
            Content = Of,
            Arrangement = Arrange,
            View = View,
            Scale = Scale,
            Enlarge = Enlarge,
            PageSize = page,
            Margin = Margin,
            Title = Title,
            CellSize = CellSize,
            Columns = Columns,
            Background = SheetBackground.Parse(Background),
            Force = Force,
            Progress = watched.Report,
        };
    }

    private void Export(LayerFile file, IReadOnlyList<Layer> layers)
    {
        var path = SavePlaces.LocatePicture(PathResolver.ResolveLiteral(this, Path), file);
        places.Claim(path, file);
        if (!ShouldProcess(path, $"Write a contact sheet of {file.Path}")) return;
        Tell(path, file.Name, watched.Wait(file.Name, () => SheetWriter.Write(file, layers, path, options, stopping.Token)));
    }

    private void ExportOverview()
    {
        var path = PathResolver.ResolveLiteral(this, Path);
        if (System.IO.Path.GetExtension(path).Length == 0 || Directory.Exists(path)) path = System.IO.Path.Combine(path, OverviewName);
        var files = Views.Count(overview.Count, "file");
        if (!ShouldProcess(path, $"Write a contact sheet of {files}")) return;
        Tell(path, files, watched.Wait(files, () => SheetWriter.WriteOverview(overview, path, options, stopping.Token)));
    }

    private void Tell(string path, string name, SheetResult result)
    {
        WriteWarnings(name, result.Warnings);
        WriteVerbose($"{path}: {Views.Count(result.PartCount, Of.ToString().ToLowerInvariant())} on {Views.Count(result.PageCount, "page")}");
        foreach (var page in result.Paths) WriteFile(page);
    }
}
