using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Ledgers;
using LayerTools.Measures;

namespace LayerTools.Commands;

/// <summary>Tells for each layer how far it is.</summary>
[Cmdlet(VerbsCommon.Get, "LayerStatus")]
[OutputType(typeof(LayerStatus), typeof(LedgerStatus))]
public sealed class GetLayerStatusCommand : LayerStatusCommand
{
    /// <inheritdoc/>
    private protected override void Take(IReadOnlyList<LayerStatus> statuses) => WriteObject(statuses, enumerateCollection: true);
}
