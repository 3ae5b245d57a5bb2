using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Completion;
using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Commands;

/// <summary>Lists the layers of files, front to back.</summary>
[Cmdlet(VerbsCommon.Get, "Layer", DefaultParameterSetName = ParameterSets.Path)]
[OutputType(typeof(Layer))]
public sealed class GetLayerCommand : LayerFilePathCommand
{
    /// <summary>Layered files that were read before, with their pending edits.</summary>
    [Parameter(Mandatory = true, ValueFromPipeline = true, ParameterSetName = ParameterSets.File)]
    [ValidateNotNullOrEmpty]
    public LayerFile[] InputObject { get; set; } = [];

    /// <summary>Names of the layers; wildcards are allowed.</summary>
    [Parameter(Position = 1)]
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

    /// <summary>The colour marks of the layers.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    public Mark[]? Mark { get; set; }

    /// <summary>Only layers that are not groups.</summary>
    [Parameter]
    public SwitchParameter Leaf { get; set; }

    /// <inheritdoc/>
    protected override void ProcessRecord()
    {
        if (ParameterSetName == ParameterSets.File)
        {
            foreach (var file in InputObject) Try(file, () => Process(file));
        }
        else
        {
            base.ProcessRecord();
        }
    }

    /// <inheritdoc/>
    private protected override void Process(LayerFile file)
    {
        var filter = new LayerFilter
        {
            Name = Name,
            LayerPath = LayerPath,
            LiteralLayerPath = LiteralLayerPath,
            LayerNumber = LayerNumber,
            Kind = Kind,
            Side = Side,
            Mark = Mark,
            Leaf = Leaf,
        };
        WriteObject(filter.Apply(file.Name, file.GetLayers().ToList()), enumerateCollection: true);
    }
}
