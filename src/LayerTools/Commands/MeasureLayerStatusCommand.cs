using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Measures;

namespace LayerTools.Commands;

/// <summary>Sums up how far files are.</summary>
[Cmdlet(VerbsDiagnostic.Measure, "LayerStatus")]
[OutputType(typeof(StatusSummary))]
public sealed class MeasureLayerStatusCommand : LayerStatusCommand
{
    private StatusSums? sums;

    /// <summary>What to sum up by.</summary>
    [Parameter(Position = 0)]
    public StatusGrouping By { get; set; } = StatusGrouping.File;

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
}
