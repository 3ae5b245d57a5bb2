using System.Collections;
using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Formats;
using LayerTools.Images;
using LayerTools.Model;

namespace LayerTools.Commands;

/// <summary>Writes each part, or the whole figure, as a picture.</summary>
[Cmdlet(VerbsData.Export, "LayerImage", SupportsShouldProcess = true, DefaultParameterSetName = PartsSet)]
[OutputType(typeof(FileInfo))]
public sealed class ExportLayerImageCommand : LayerSelectionCommand, IDisposable
{
    private const string PartsSet = "Parts";
    private const string MergedSet = "Merged";
    private const string StoredSet = "Stored";

    private readonly SavePlaces places = new();
    private readonly CancellationTokenSource stopping = new();
    private ThrottledProgress? progress;
    private WatchedWork? watched;
    private ReadLimits limits = ReadLimits.Default;

    /// <summary>The folder to write to; a folder called like the file is made in it for the parts.</summary>
    [Parameter(Mandatory = true, Position = 0)]
    [ValidateNotNullOrEmpty]
    public string Destination { get; set; } = string.Empty;

    /// <summary>Makes each part's picture as large as the canvas.</summary>
    [Parameter(ParameterSetName = PartsSet)]
    public SwitchParameter Canvas { get; set; }

    /// <summary>Leaves the layers' masks out of their pictures.</summary>
    [Parameter(ParameterSetName = PartsSet)]
    public SwitchParameter NoMask { get; set; }

    /// <summary>Writes the whole figure, drawn from its layers.</summary>
    [Parameter(Mandatory = true, ParameterSetName = MergedSet)]
    public SwitchParameter Merged { get; set; }

    /// <summary>Writes the merged picture that the file holds.</summary>
    [Parameter(Mandatory = true, ParameterSetName = StoredSet)]
    public SwitchParameter Stored { get; set; }

    /// <summary>Overwrites files that exist.</summary>
    [Parameter]
    public SwitchParameter Force { get; set; }

    /// <summary>Limits to raise for large pictures: PictureMegapixels, MemoryMegabytes.</summary>
    [Parameter]
    [ValidateNotNull]
    public Hashtable? Limit { get; set; }

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
        progress = new ThrottledProgress(this, "Writing pictures");
        watched = new WatchedWork(progress, stopping);
        if (ParameterSetName != PartsSet && !Filter.IsEmpty)
        {
            ThrowTerminatingError(ErrorRecords.BadArgument("WholeFigureOnly", $"-{ParameterSetName} writes the whole figure. Leave it out to write chosen layers, or leave the choice of layers out."));
        }

        try
        {
            if (Limit is not null) limits = ReadLimitsTable.Parse(Limit);
        }
        catch (RefusedException refused)
        {
            ThrowTerminatingError(refused.Record);
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
    private protected override void ProcessFile(LayerFile file) => Export(file, Filter.Apply(file.Name, file.GetLayers().ToList()));

    /// <inheritdoc/>
    private protected override void ProcessLayers(IReadOnlyList<Layer> layers)
    {
        foreach (var (file, ofFile) in LayersByFile.Group(layers)) Try(file, () => Export(file, Filter.Apply(file.Name, ofFile)));
    }

    private void Export(LayerFile file, IReadOnlyCollection<Layer> layers)
    {
        var options = new ImageOptions { Canvas = Canvas, NoMask = NoMask, Force = Force, Limits = limits, Progress = watched!.Report };
        var destination = PathResolver.ResolveLiteral(this, Destination);
        if (ParameterSetName == PartsSet)
        {
            var folder = Path.GetFullPath(Path.Combine(destination, Path.GetFileNameWithoutExtension(file.Name)));
            Export(file, folder, $"Write pictures of {Views.Count(layers.Count, "layer")} of {file.Path}", () => LayerImages.Write(file, layers, folder, options, stopping.Token));
            return;
        }

        var path = SavePlaces.LocatePng(destination, file);
        if (Merged) Export(file, path, $"Write a picture of {file.Path} drawn from its layers", () => LayerImages.WriteMerged(file, path, options, stopping.Token));
        else Export(file, path, $"Write the merged picture that {file.Path} holds", () => LayerImages.WriteStored(file, path, options, stopping.Token));
    }

    private void Export(LayerFile file, string path, string action, Func<ImageResult> write)
    {
        places.Claim(path, file);
        if (!ShouldProcess(path, action)) return;
        var result = watched!.Wait(file.Name, write);
        WriteWarnings(file.Name, result.Warnings);
        WriteVerbose($"{path}: {Views.Count(result.PictureCount, "picture")}");
        foreach (var written in result.Paths) WriteFile(written, Merged ? new PSNoteProperty(nameof(ImageResult.NotDrawn), result.NotDrawn) : null);
    }
}
