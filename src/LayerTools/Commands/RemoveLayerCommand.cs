using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Edits;
using LayerTools.Model;

namespace LayerTools.Commands;

/// <summary>Removes layers, groups with all that is in them.</summary>
[Cmdlet(VerbsCommon.Remove, "Layer", SupportsShouldProcess = true, ConfirmImpact = ConfirmImpact.Medium)]
[OutputType(typeof(LayerFile))]
public sealed class RemoveLayerCommand : MarkedLayerEditCommand
{
    /// <inheritdoc/>
    private protected override string Action => "Remove layers";

    /// <inheritdoc/>
    private protected override bool NeedsSelection => true;

    /// <inheritdoc/>
    private protected override LayerEdit CreateEdit(LayerFile file) => new RemoveEdit();
}
