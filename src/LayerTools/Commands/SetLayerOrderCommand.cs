using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Completion;
using LayerTools.Edits;
using LayerTools.Model;
using LayerTools.Profiles;

namespace LayerTools.Commands;

/// <summary>Puts the stack in the order of a profile within each group, moving as little as possible.</summary>
[Cmdlet(VerbsCommon.Set, "LayerOrder", SupportsShouldProcess = true, ConfirmImpact = ConfirmImpact.Low)]
[OutputType(typeof(LayerFile), typeof(Layer))]
public sealed class SetLayerOrderCommand : MarkedLayerEditCommand
{
    /// <summary>The profile whose zones say the order: an object, the path of its file, or the name of one that ships with the module.</summary>
    [Parameter]
    [LayerProfileArgument]
    [ArgumentCompleter(typeof(LayerProfileCompleter))]
    public LayerProfile? Profile { get; set; }

    private protected override string Action => "Put layers in order";

    private protected override LayerEdit CreateEdit(LayerFile file) => new OrderEdit(Profile ?? LayerProfiles.Default);
}
