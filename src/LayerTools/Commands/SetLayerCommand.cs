using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Edits;
using LayerTools.Model;

namespace LayerTools.Commands;

/// <summary>Sets layers' mark, visibility and opacity.</summary>
[Cmdlet(VerbsCommon.Set, "Layer", SupportsShouldProcess = true, ConfirmImpact = ConfirmImpact.Low)]
[OutputType(typeof(LayerFile), typeof(Layer))]
public sealed class SetLayerCommand : LayerEditCommand
{
    /// <summary>The new colour mark; None takes marks away.</summary>
    [Parameter]
    public Mark? Mark { get; set; }

    /// <summary>Whether the layers are switched on.</summary>
    [Parameter]
    public bool? Visible { get; set; }

    /// <summary>The new opacity, 0 to 100 %.</summary>
    [Parameter]
    [ValidateRange(0.0, 100.0)]
    public double? Opacity { get; set; }

    /// <inheritdoc/>
    private protected override string Action => "Set layers";

    /// <inheritdoc/>
    protected override void BeginProcessing()
    {
        if (Mark is null && Visible is null && Opacity is null)
        {
            ThrowTerminatingError(ErrorRecords.BadArgument("NothingToSet", "Say what to set: -Mark, -Visible or -Opacity."));
        }
    }

    /// <inheritdoc/>
    private protected override LayerEdit CreateEdit(LayerFile file) => new SetLayerEdit { Mark = Mark, Visible = Visible, Opacity = Opacity };
}
