using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Measures.Symmetry;
using LayerTools.Model;
using LayerTools.Sheets;

namespace LayerTools.Commands;

/// <summary>Tells how well pairs, central parts and the whole figure agree with their reflections, or shows where the halves differ.</summary>
[Cmdlet(VerbsDiagnostic.Measure, "LayerSymmetry", SupportsShouldProcess = true, DefaultParameterSetName = FiguresSet)]
[OutputType(typeof(LayerSymmetry), ParameterSetName = [FiguresSet])]
[OutputType(typeof(FileInfo), ParameterSetName = [HeatmapSet])]
public sealed class MeasureLayerSymmetryCommand : LayerSelectionCommand, IDisposable
{
    private const string FiguresSet = "Figures";
    private const string HeatmapSet = "Heatmap";

    private readonly SavePlaces places = new();
    private readonly CancellationTokenSource stopping = new();
    private ThrottledProgress? progress;
    private WatchedWork? watched;

    /// <summary>The PNG to write, or the folder to write one to for each file, instead of telling figures.</summary>
    [Parameter(Mandatory = true, ParameterSetName = HeatmapSet)]
    [ValidateNotNullOrEmpty]
    public string Heatmap { get; set; } = string.Empty;

    /// <summary>Overwrites pictures that exist.</summary>
    [Parameter(ParameterSetName = HeatmapSet)]
    public SwitchParameter Force { get; set; }

    /// <summary>The colour marks of the layers.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    public Mark[]? Mark { get; set; }

    /// <inheritdoc/>
    private protected override Mark[]? ChosenMarks => Mark;

    /// <summary>Frees what stops the work; writes nothing.</summary>
    public void Dispose() => stopping.Dispose();

    /// <inheritdoc/>
    protected override void BeginProcessing()
    {
        progress = new ThrottledProgress(this, "Measuring symmetry");
        watched = new WatchedWork(progress, stopping);
        if (ParameterSetName == HeatmapSet && !Filter.IsEmpty)
        {
            ThrowTerminatingError(ErrorRecords.BadArgument("WholeFigureOnly", "-Heatmap shows the whole figure. Leave it out to measure chosen layers, or leave the choice of layers out."));
        }
    }

    /// <inheritdoc/>
    protected override void EndProcessing()
    {
        base.EndProcessing();
        progress?.Complete();
    }

    /// <inheritdoc/>
    protected override void StopProcessing() => stopping.Cancel();

    /// <inheritdoc/>
    private protected override void ProcessFile(LayerFile file) => Measure(file, Filter.IsEmpty ? null : Filter.Apply(file.Name, file.GetLayers().ToList()));

    /// <inheritdoc/>
    private protected override void ProcessLayers(IReadOnlyList<Layer> layers)
    {
        foreach (var (file, ofFile) in LayersByFile.Group(layers)) Try(file, () => Measure(file, Filter.Apply(file.Name, ofFile)));
    }

    private void Measure(LayerFile file, IReadOnlyList<Layer>? layers)
    {
        if (ParameterSetName == HeatmapSet) Draw(file);
        else WriteObject(watched!.Wait(file.Name, () => new SymmetryReader(new SymmetryOptions { Progress = watched.Report }).Read(file, layers, stopping.Token)), enumerateCollection: true);
    }

    private void Draw(LayerFile file)
    {
        var path = SavePlaces.LocatePicture(PathResolver.ResolveLiteral(this, Heatmap), file);
        places.Claim(path, file);
        if (!ShouldProcess(path, $"Write a picture of where the halves of {file.Path} differ")) return;
        var result = watched!.Wait(file.Name, () => SymmetrySheet.Write(file, path, Force, stopping.Token));
        WriteWarnings(file.Name, result.Warnings);
        foreach (var written in result.Paths) WriteFile(written);
    }
}
