using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Model;

namespace LayerTools.Commands;

/// <summary>Reads layered files: facts and tree, no pixels.</summary>
[Cmdlet(VerbsCommon.Get, "LayerFile", DefaultParameterSetName = ParameterSets.Path)]
[OutputType(typeof(LayerFile))]
public sealed class GetLayerFileCommand : LayerFilePathCommand
{
    /// <inheritdoc/>
    private protected override void Process(LayerFile file) => WriteObject(file);
}
