using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Measures;

namespace LayerTools.Commands;

/// <summary>Sums up how far files are.</summary>
[Cmdlet(VerbsDiagnostic.Measure, "LayerStatus", SupportsShouldProcess = true)]
[OutputType(typeof(StatusSummary))]
public sealed class MeasureLayerStatusCommand : LayerStatusCommand
{
    private StatusSums? sums;

    /// <summary>What to sum up by.</summary>
    [Parameter(Position = 0)]
    public StatusGrouping By { get; set; } = StatusGrouping.File;

    /// <summary>The CSV file that gets a line with the sum of everything; made if missing.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    public string? History { get; set; }

    /// <inheritdoc/>
    protected override void BeginProcessing()
    {
        base.BeginProcessing();
        sums = new StatusSums(By);
    }

    /// <inheritdoc/>
    protected override void EndProcessing()
    {
        base.EndProcessing();
        WriteObject(sums!.Summarize(), enumerateCollection: true);
        if (History is not null) Try(History, () => Append(PathResolver.ResolveLiteral(this, History)));
    }

    /// <inheritdoc/>
    private protected override bool TryProcessOther(object item)
    {
        if (item is not LayerStatus status) return false;
        sums!.Add(status);
        return true;
    }

    /// <inheritdoc/>
    private protected override void Take(IReadOnlyList<LayerStatus> statuses)
    {
        foreach (var status in statuses) sums!.Add(status);
    }

    private void Append(string path)
    {
        if (sums!.FileCount == 0)
        {
            WriteWarning($"{path}: There was no file to sum up, so nothing was appended.");
            return;
        }

        if (!ShouldProcess(path, $"Append the sum of {Views.Count(sums.FileCount, "file")}")) return;
        try
        {
            StatusHistory.Append(path, sums.SummarizeAll(), sums.FileCount, DateTime.UtcNow, Cancellation);
        }
        catch (OperationCanceledException)
        {
            throw new PipelineStoppedException();
        }
    }
}
