using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Model;
using LayerTools.Text;

namespace LayerTools.Commands;

/// <summary>Shows a layer tree as a person reads it.</summary>
[Cmdlet(VerbsCommon.Format, "LayerTree")]
[OutputType(typeof(string))]
public sealed class FormatLayerTreeCommand : LayerSelectionCommand
{
    private bool isFirst = true;

    /// <summary>The colour marks of the layers.</summary>
    [Parameter]
    [ValidateNotNullOrEmpty]
    public Mark[]? Mark { get; set; }

    /// <inheritdoc/>
    private protected override Mark[]? ChosenMarks => Mark;

    /// <inheritdoc/>
    private protected override void ProcessFile(LayerFile file) => Write(file, Filter.Apply(file.Name, file.GetLayers().ToList()));

    /// <inheritdoc/>
    private protected override void ProcessLayers(IReadOnlyList<Layer> layers)
    {
        foreach (var (file, ofFile) in LayersByFile.Group(layers)) Try(file, () => Write(file, Filter.Apply(file.Name, ofFile)));
    }

    private void Write(LayerFile file, IReadOnlyList<Layer> layers)
    {
        if (!isFirst) WriteObject(string.Empty);
        isFirst = false;
        WriteObject(LayerTreeText.Format(file, layers, ColorSupport.IsWanted(this)), enumerateCollection: true);
    }
}
