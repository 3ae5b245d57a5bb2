using System.Management.Automation;
using LayerTools.Completion;
using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Binding;

/// <summary>A cmdlet that works on chosen layers of the files, or on the layers, that come in.</summary>
public abstract class LayerSelectionCommand : LayerInputCommand
{
    private protected LayerSelectionCommand()
    {
    }

    /// <summary>Names of the layers; wildcards are allowed.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    [SupportsWildcards]
    [ArgumentCompleter(typeof(LayerNameCompleter))]
    public string[]? Name { get; set; }

    /// <summary>Paths of the layers; wildcards are allowed.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    [SupportsWildcards]
    [ArgumentCompleter(typeof(LayerPathCompleter))]
    public string[]? LayerPath { get; set; }

    /// <summary>Paths of the layers, each character meant as it stands.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    [ArgumentCompleter(typeof(LiteralLayerPathCompleter))]
    public string[]? LiteralLayerPath { get; set; }

    /// <summary>Numbers of the layers in the flattened tree; 1 = front-most.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    [ValidateRange(1, int.MaxValue)]
    public int[]? LayerNumber { get; set; }

    /// <summary>What the layers are made of.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    public LayerKind[]? Kind { get; set; }

    /// <summary>The sides that the layers' names say.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    public Side[]? Side { get; set; }

    /// <summary>What was asked for, as a filter.</summary>
    private protected LayerFilter Filter => new()
    {
        Name = Name,
        LayerPath = LayerPath,
        LiteralLayerPath = LiteralLayerPath,
        LayerNumber = LayerNumber,
        Kind = Kind,
        Side = Side,
        Mark = ChosenMarks,
    };

    /// <summary>The colour marks to choose by. Not a parameter here, since where a mark is set -Mark means the new one.</summary>
    private protected virtual Mark[]? ChosenMarks => null;
}
