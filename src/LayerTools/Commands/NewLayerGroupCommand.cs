using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Completion;
using LayerTools.Edits;
using LayerTools.Model;

namespace LayerTools.Commands;

/// <summary>Makes a group, empty or around layers.</summary>
[Cmdlet(VerbsCommon.New, "LayerGroup", SupportsShouldProcess = true, ConfirmImpact = ConfirmImpact.Low)]
[OutputType(typeof(LayerFile), typeof(Layer))]
public sealed class NewLayerGroupCommand : LayerInputCommand
{
    private EditRunner? runner;

    /// <summary>The group's name.</summary>
    [Parameter(Mandatory = true, Position = 0)]
    [ValidateNotNullOrEmpty]
    public string Name { get; set; } = string.Empty;

    /// <summary>Names or paths of the layers that go into the group; wildcards are allowed.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    [SupportsWildcards]
    [ArgumentCompleter(typeof(LayerPathCompleter))]
    public string[]? Around { get; set; }

    /// <summary>Lets the group share its name with a layer beside it.</summary>
    [Parameter]
    public SwitchParameter AllowDuplicate { get; set; }

    private EditRunner Runner => runner ??= new EditRunner(this, "Make a group");

    /// <inheritdoc/>
    private protected override void ProcessFile(LayerFile file)
    {
        Run(file, Around is null ? [] : Choose(file, file.GetLayers().ToList()));
        WriteObject(file);
    }

    /// <inheritdoc/>
    private protected override void ProcessLayers(IReadOnlyList<Layer> layers) => Runner.RunAll(layers, (file, ofFile) =>
    {
        Run(file, Around is null ? ofFile : Choose(file, ofFile));
        return null;
    });

    private void Run(LayerFile file, IReadOnlyList<Layer> layers) => Runner.Run(new NewGroupEdit(Name) { AllowDuplicate = AllowDuplicate }, file, layers);

    private List<Layer> Choose(LayerFile file, IReadOnlyList<Layer> layers)
    {
        var chosen = new LayerFilter { Name = Around }.Apply(file.Name, layers).Union(new LayerFilter { LayerPath = Around }.Apply(file.Name, layers)).ToList();
        return chosen.Count > 0 ? chosen : throw new RefusedException(ErrorRecords.LayerNotFound(file.Name, $"that fits '{string.Join("', '", Around!)}'", file));
    }
}
