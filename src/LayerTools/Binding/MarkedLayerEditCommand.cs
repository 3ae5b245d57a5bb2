using System.Management.Automation;
using LayerTools.Model;

namespace LayerTools.Binding;

/// <summary>An edit whose layers can be chosen by their colour mark too.</summary>
public abstract class MarkedLayerEditCommand : LayerEditCommand
{
    private protected MarkedLayerEditCommand()
    {
    }

    /// <summary>The colour marks of the layers.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    public Mark[]? Mark { get; set; }

    /// <inheritdoc/>
    private protected override Mark[]? ChosenMarks => Mark;
}
