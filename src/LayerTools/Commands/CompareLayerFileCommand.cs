using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Deliveries;

namespace LayerTools.Commands;

/// <summary>Tells layer by layer what changed between two deliveries.</summary>
[Cmdlet(VerbsData.Compare, "LayerFile")]
[OutputType(typeof(LayerDifference))]
public sealed class CompareLayerFileCommand : LayerToolsCommand, IDisposable
{
    private readonly CancellationTokenSource stopping = new();
    private ThrottledProgress? progress;
    private IReadOnlyList<LayerFileReference> references = [];
    private bool isFolder;
    private readonly HashSet<LayerFileReference> used = [];

    /// <summary>The delivery before: a layered file, its path, or a folder of files.</summary>
    [Parameter(Mandatory = true, Position = 0)]
    [ValidateNotNull]
    public object Reference { get; set; } = string.Empty;

    /// <summary>The delivery of now, likewise; files of folders are compared by name.</summary>
    [Parameter(Mandatory = true, Position = 1, ValueFromPipeline = true)]
    [ValidateNotNull]
    public object[] Difference { get; set; } = [];

    /// <summary>Leaves out the layers that are the same.</summary>
    [Parameter]
    public SwitchParameter ExcludeSame { get; set; }

    /// <summary>Frees what stops the work.</summary>
    public void Dispose() => stopping.Dispose();

    /// <inheritdoc/>
    protected override void BeginProcessing()
    {
        progress = new ThrottledProgress(this, "Comparing layered files");
        try
        {
            references = LayerFileArgument.Find(this, Reference);
            isFolder = LayerFileArgument.IsFolder(this, Reference);
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
        foreach (var left in references.Where(reference => !used.Contains(reference))) WriteWarning($"{left.Path}: Nothing was compared with it.");
        progress?.Complete();
    }

    /// <inheritdoc/>
    protected override void StopProcessing() => stopping.Cancel();

    private void Compare(LayerFileReference now)
    {
        if (FindReference(now) is not { } before)
        {
            WriteWarning($"{now.Path}: There is no file of this name among those before, so it is new as a whole.");
            return;
        }

        used.Add(before);
        progress!.Report(System.IO.Path.GetFileName(now.Path));
        DeliveryComparison comparison;
        try
        {
            comparison = DeliveryComparer.Compare(before.Open(), now.Open(), stopping.Token);
        }
        catch (OperationCanceledException)
        {
            throw new PipelineStoppedException();
        }

        WriteWarnings(System.IO.Path.GetFileName(now.Path), comparison.Warnings);
        WriteObject(comparison.Differences.Where(difference => !ExcludeSame || difference.Change != LayerChange.Same), enumerateCollection: true);
    }

    /// <summary>The only file there is, else the one of the same name, be it a PSD or a PSB.</summary>
    private LayerFileReference? FindReference(LayerFileReference now)
    {
        if (references.Count == 1 && !isFolder) return references[0];
        return references.FirstOrDefault(reference => IsNamed(reference, now, System.IO.Path.GetFileName)) ?? references.FirstOrDefault(reference => IsNamed(reference, now, System.IO.Path.GetFileNameWithoutExtension));
    }

    private static bool IsNamed(LayerFileReference one, LayerFileReference other, Func<string, string?> part) => string.Equals(part(one.Path), part(other.Path), StringComparison.OrdinalIgnoreCase);
}
