using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Completion;
using LayerTools.Model;
using LayerTools.Sheets;

namespace LayerTools.Commands;

/// <summary>Writes contact sheets that show every part of a file.</summary>
[Cmdlet(VerbsData.Export, "LayerSheet", SupportsShouldProcess = true)]
[OutputType(typeof(FileInfo))]
public sealed class ExportLayerSheetCommand : LayerSelectionCommand, IDisposable
{
    private readonly SavePlaces places = new();
    private readonly CancellationTokenSource stopping = new();
    private SheetBackground background = SheetBackground.Grey;

    /// <summary>The PNG to write, or the folder to write one to for each file.</summary>
    [Parameter(Mandatory = true, Position = 0)]
    [ValidateNotNullOrEmpty]
    public string Path { get; set; } = string.Empty;

    /// <summary>Side of the square that a part is fitted into, px.</summary>
    [Parameter]
    [ValidateRange(SheetOptions.SmallestCell, SheetOptions.LargestCell)]
    public int CellSize { get; set; } = 320;

    /// <summary>Cells side by side; chosen to suit if left out.</summary>
    [Parameter]
    [ValidateRange(1, 1000)]
    public int? Columns { get; set; }

    /// <summary>What the parts stand on: grey, checker, or a colour #rrggbb.</summary>
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
            background = SheetBackground.Parse(Background);
        }
        catch (SheetException error)
        {
            ThrowTerminatingError(ErrorRecords.FromCore(error, Background));
        }
    }

    /// <inheritdoc/>
    protected override void StopProcessing() => stopping.Cancel();

    /// <inheritdoc/>
    private protected override void ProcessFile(LayerFile file) => Export(file, Filter.Apply(file.Name, file.GetLayers().ToList()));

    /// <inheritdoc/>
    private protected override void ProcessLayers(IReadOnlyList<Layer> layers)
    {
        foreach (var (file, ofFile) in LayersByFile.Group(layers)) Try(file, () => Export(file, Filter.Apply(file.Name, ofFile)));
    }

    private void Export(LayerFile file, IReadOnlyList<Layer> layers)
    {
        var path = SavePlaces.LocatePicture(PathResolver.ResolveLiteral(this, Path), file);
        places.Claim(path, file);
        if (!ShouldProcess(path, $"Write a contact sheet of {file.Path}")) return;
        var options = new SheetOptions { CellSize = CellSize, Columns = Columns, Background = background, Force = Force };
        try
        {
            var result = SheetWriter.Write(file, layers, path, options, stopping.Token);
            WriteWarnings(file.Name, result.Warnings);
            WriteVerbose($"{path}: {Views.Count(result.PartCount, "part")} on {Views.Count(result.Paths.Count, "page")}");
            foreach (var page in result.Paths) WriteFile(page);
        }
        catch (OperationCanceledException)
        {
            throw new PipelineStoppedException();
        }
    }
}
