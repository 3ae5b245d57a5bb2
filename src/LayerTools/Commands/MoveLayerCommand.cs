using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Completion;
using LayerTools.Edits;
using LayerTools.Model;

namespace LayerTools.Commands;

/// <summary>Moves layers to another place in the stack.</summary>
[Cmdlet(VerbsCommon.Move, "Layer", SupportsShouldProcess = true, ConfirmImpact = ConfirmImpact.Low)]
[OutputType(typeof(LayerFile), typeof(Layer))]
public sealed class MoveLayerCommand : MarkedLayerEditCommand
{
    private const string BeforeSet = "Before";
    private const string AfterSet = "After";
    private const string IntoSet = "Into";

    /// <summary>The layer to go directly in front of: its path, or its number.</summary>
    [Parameter(Mandatory = true, ParameterSetName = BeforeSet)]
    [ValidateNotNullOrEmpty]
    [ArgumentCompleter(typeof(LayerReferenceCompleter))]
    public object Before { get; set; } = string.Empty;

    /// <summary>The layer to go directly behind: its path, or its number.</summary>
    [Parameter(Mandatory = true, ParameterSetName = AfterSet)]
    [ValidateNotNullOrEmpty]
    [ArgumentCompleter(typeof(LayerReferenceCompleter))]
    public object After { get; set; } = string.Empty;

    /// <summary>The group to go into, in front of what is there: its path, or its number.</summary>
    [Parameter(Mandatory = true, ParameterSetName = IntoSet)]
    [ValidateNotNullOrEmpty]
    [ArgumentCompleter(typeof(LayerReferenceCompleter))]
    public object Into { get; set; } = string.Empty;

    /// <inheritdoc/>
    private protected override string Action => "Move layers";

    /// <inheritdoc/>
    private protected override bool NeedsSelection => true;

    /// <inheritdoc/>
    private protected override LayerEdit CreateEdit(LayerFile file) => ParameterSetName switch
    {
        BeforeSet => new MoveEdit(MovePlace.Before, LayerReference.Find(file, Before)),
        AfterSet => new MoveEdit(MovePlace.After, LayerReference.Find(file, After)),
        _ => new MoveEdit(MovePlace.Into, LayerReference.Find(file, Into)),
    };
}
