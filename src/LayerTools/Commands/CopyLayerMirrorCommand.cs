using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Edits;
using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Commands;

/// <summary>Reflects parts across the centre line, exact to the pixel.</summary>
[Cmdlet(VerbsCommon.Copy, "LayerMirror", SupportsShouldProcess = true, ConfirmImpact = ConfirmImpact.Low)]
[OutputType(typeof(LayerFile), typeof(Layer))]
public sealed class CopyLayerMirrorCommand : MarkedLayerEditCommand
{
    /// <summary>The side that is copied to the other.</summary>
    [Parameter(Position = 0)]
    [ValidateSet(nameof(Names.Side.Left), nameof(Names.Side.Right))]
    public Side From { get; set; } = Names.Side.Left;

    /// <summary>x of the line to reflect across, canvas px, a multiple of 0.5; the middle of the canvas if left out.</summary>
    [Parameter]
    public double? Axis { get; set; }

    /// <summary>What happens to a part whose opposite is in the file already.</summary>
    [Parameter]
    public MirrorExisting Existing { get; set; } = MirrorExisting.Skip;

    /// <inheritdoc/>
    private protected override string Action => "Reflect parts";

    /// <inheritdoc/>
    private protected override LayerEdit CreateEdit(LayerFile file) => new MirrorEdit { From = From, Axis = Axis, Existing = Existing };
}
