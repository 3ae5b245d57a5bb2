using System.Collections;
using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Deliveries;
using LayerTools.Formats;
using LayerTools.Model;
using LayerTools.Sheets;

namespace LayerTools.Commands;

/// <summary>Tells layer by layer what changed between two deliveries, or shows what was repainted.</summary>
[Cmdlet(VerbsData.Compare, "LayerFile", SupportsShouldProcess = true, DefaultParameterSetName = FiguresSet)]
[OutputType(typeof(LayerDifference), ParameterSetName = [FiguresSet])]
[OutputType(typeof(FileInfo), ParameterSetName = [PictureSet])]
public sealed class CompareLayerFileCommand : LayerToolsCommand, IDisposable
{
    private const string FiguresSet = "Figures";
    private const string PictureSet = "Picture";

    private readonly SavePlaces places = new();
    private readonly CancellationTokenSource stopping = new();
    private ThrottledProgress? progress;
    private WatchedWork? watched;
    private DeliveryFiles? references;
    private ReadLimits limits = ReadLimits.Default;

    /// <summary>The delivery before: a layered file, its path, or a folder of files.</summary>
    [Parameter(Mandatory = true, Position = 0)]
    [ValidateNotNull]
    public object Reference { get; set; } = string.Empty;

    /// <summary>The delivery of now, likewise; files of folders are compared by name.</summary>
    [Parameter(Mandatory = true, Position = 1, ValueFromPipeline = true)]
    [ValidateNotNull]
    public object[] Difference { get; set; } = [];

    /// <summary>Leaves out the layers that are the same.</summary>
    [Parameter(ParameterSetName = FiguresSet)]
    public SwitchParameter ExcludeSame { get; set; }

    /// <summary>The folder to write a picture to for each layer that was repainted, instead of telling figures.</summary>
    [Parameter(Mandatory = true, ParameterSetName = PictureSet)]
    [ValidateNotNullOrEmpty]
    public string Picture { get; set; } = string.Empty;

    /// <summary>Overwrites pictures that exist.</summary>
    [Parameter(ParameterSetName = PictureSet)]
    public SwitchParameter Force { get; set; }

    /// <summary>Limits to raise for large files: Layers, GroupDepth, MemoryMegabytes.</summary>
    [Parameter]
    [ValidateNotNull]
    public Hashtable? Limit { get; set; }

    /// <summary>Frees what stops the work; writes nothing.</summary>
    public void Dispose() => stopping.Dispose();

    /// <inheritdoc/>
    protected override void BeginProcessing()
    {
        progress = new ThrottledProgress(this, "Comparing layered files");
        watched = new WatchedWork(progress, stopping);
        try
        {
            if (Limit is not null) limits = ReadLimitsTable.Parse(Limit);
            references = DeliveryFiles.Find(this, Reference);
        }
        catch (RefusedException refused)
        {
            ThrowTerminatingError(refused.Record);
        }
    }

    /// <inheritdoc/>
    protected override void ProcessRecord()
    {
        foreach (var item in Difference)
        {
            IReadOnlyList<LayerFileReference> files = [];
            Try(item, () => files = LayerFileArgument.Find(this, item));
            foreach (var file in files) Try(file.Path, () => Compare(file));
        }
    }

    /// <inheritdoc/>
    protected override void EndProcessing()
    {
        ThrowIfStopping();
        foreach (var left in references!.Unused) WriteWarning($"{left.Path}: Nothing was compared with it.");
        progress?.Complete();
    }

    /// <inheritdoc/>
    protected override void StopProcessing() => stopping.Cancel();

    private void Compare(LayerFileReference now)
    {
        if (references!.Take(now.Path) is not { } before)
        {
            WriteWarning($"{now.Path}: There is no file of this name among those before, so it is new as a whole.");
            return;
        }

        var name = System.IO.Path.GetFileName(now.Path);
        var (old, @new, comparison) = watched!.Wait(name, () =>
        {
            var (one, two) = (before.Open(limits), now.Open(limits));
            return (one, two, DeliveryComparer.Compare(one, two, stopping.Token));
        });
        WriteWarnings(name, comparison.Warnings);
        if (ParameterSetName == PictureSet) Draw(old, @new, comparison.Differences);
        else WriteObject(comparison.Differences.Where(difference => !ExcludeSame || difference.Change != LayerChange.Same), enumerateCollection: true);
    }

    private void Draw(LayerFile old, LayerFile @new, IReadOnlyList<LayerDifference> differences)
    {
        var folder = System.IO.Path.Combine(PathResolver.ResolveLiteral(this, Picture), System.IO.Path.GetFileNameWithoutExtension(@new.Name));
        var count = DifferencePictures.List(@new, differences, folder).Count;
        if (count == 0) return;
        places.Claim(folder, @new);
        if (!ShouldProcess(folder, FormattableString.Invariant($"Write {count} picture(s) of what was repainted in {@new.Path}"))) return;
        foreach (var path in watched!.Wait(@new.Name, () => DifferencePictures.Write(old, @new, differences, folder, Force, stopping.Token))) WriteFile(path);
    }
}
