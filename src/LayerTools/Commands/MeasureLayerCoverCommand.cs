using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Images;
using LayerTools.Measures.Cover;
using LayerTools.Model;

namespace LayerTools.Commands;

/// <summary>Tells how much of each part is seen, and how far it is painted on underneath the parts that cover it.</summary>
[Cmdlet(VerbsDiagnostic.Measure, "LayerCover", SupportsShouldProcess = true, DefaultParameterSetName = FiguresSet)]
[OutputType(typeof(PartCover), typeof(SeamCover), ParameterSetName = [FiguresSet])]
[OutputType(typeof(FileInfo), ParameterSetName = [PictureSet])]
public sealed class MeasureLayerCoverCommand : LayerSelectionCommand, IDisposable
{
    private const string FiguresSet = "Figures";
    private const string PictureSet = "Picture";

    private readonly SavePlaces places = new();
    private readonly CancellationTokenSource stopping = new();

    /// <summary>Whether to tell each part, or each part with each neighbour.</summary>
    [Parameter(Position = 0, ParameterSetName = FiguresSet)]
    public CoverGrouping By { get; set; } = CoverGrouping.Part;

    /// <summary>The folder to write pictures of the seams that would open to; a folder called like the file is made in it.</summary>
    [Parameter(Mandatory = true, ParameterSetName = PictureSet)]
    [ValidateNotNullOrEmpty]
    public string Picture { get; set; } = string.Empty;

    /// <summary>Overwrites pictures that exist.</summary>
    [Parameter(ParameterSetName = PictureSet)]
    public SwitchParameter Force { get; set; }

    /// <summary>How far parts should be painted on underneath, px.</summary>
    [Parameter]
    public double? WantedDepth { get; set; }

    /// <summary>Depths are measured up to this, px.</summary>
    [Parameter]
    [ValidateRange(1, CoverOptions.DeepestDepth)]
    public int MaximumDepth { get; set; } = new CoverOptions().MaximumDepth;

    /// <summary>Hidden parts are measured, and cover others, as if they were shown.</summary>
    [Parameter]
    public SwitchParameter IncludeHidden { get; set; }

    /// <summary>The colour marks of the layers.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    public Mark[]? Mark { get; set; }

    /// <inheritdoc/>
    private protected override Mark[]? ChosenMarks => Mark;

    /// <summary>Frees what stops the work.</summary>
    public void Dispose() => stopping.Dispose();

    /// <inheritdoc/>
    protected override void StopProcessing() => stopping.Cancel();

    /// <inheritdoc/>
    private protected override void ProcessFile(LayerFile file) => Measure(file, Filter.Apply(file.Name, file.GetLayers().ToList()));

    /// <inheritdoc/>
    private protected override void ProcessLayers(IReadOnlyList<Layer> layers)
    {
        foreach (var (file, ofFile) in LayersByFile.Group(layers)) Try(file, () => Measure(file, Filter.Apply(file.Name, ofFile)));
    }

    private void Measure(LayerFile file, IReadOnlyCollection<Layer> layers)
    {
        var options = new CoverOptions { MaximumDepth = MaximumDepth, WantedDepth = WantedDepth, IncludeHidden = IncludeHidden };
        try
        {
            var cover = FigureCover.Measure(file, layers, options, stopping.Token);
            if (cover.Parts.Count == 0 && layers.Count > 0) WriteWarning($"{file.Name}: None of the layers is a part that is shown. -{nameof(IncludeHidden)} measures hidden parts too.");
            if (ParameterSetName == PictureSet) WritePictures(file, cover);
            else if (By == CoverGrouping.Part) WriteObject(cover.Parts, enumerateCollection: true);
            else WriteObject(cover.Seams, enumerateCollection: true);
        }
        catch (OperationCanceledException)
        {
            throw new PipelineStoppedException();
        }
    }

    private void WritePictures(LayerFile file, FigureCover cover)
    {
        var folder = Path.GetFullPath(Path.Combine(PathResolver.ResolveLiteral(this, Picture), Path.GetFileNameWithoutExtension(file.Name)));
        var count = cover.Seams.Count(seam => seam.ShallowLength > 0);
        WriteVerbose($"{file.Name}: {Views.Count(count, "seam")} would open");
        if (count == 0) return;
        places.Claim(folder, file);
        if (!ShouldProcess(folder, $"Write {Views.Count(count, "picture")} of seams of {file.Path}")) return;
        foreach (var path in SeamPictures.Write(cover, folder, Force, stopping.Token)) WriteFile(path);
    }
}
