using System.Management.Automation;
using LayerTools.Edits;
using LayerTools.Model;

namespace LayerTools.Binding;

/// <summary>An edit of names, which can be looked at as objects instead of being done.</summary>
public abstract class PreviewedEditCommand : MarkedLayerEditCommand
{
    private protected PreviewedEditCommand()
    {
    }

    /// <summary>Gives path, old and new name of each layer that would change, and changes nothing.</summary>
    [Parameter]
    public SwitchParameter Preview { get; set; }

    /// <summary>What a plan would change.</summary>
    private protected abstract IEnumerable<RenamePreview> Describe(EditPlan plan, LayerFile file, IReadOnlyList<Layer> layers);

    /// <inheritdoc/>
    private protected override IReadOnlyList<Layer>? Edit(LayerFile file, IReadOnlyList<Layer> layers)
    {
        if (!Preview) return base.Edit(file, layers);
        var plan = CreateEdit(file).Plan(file, layers);
        WriteWarnings(file.Name, plan.Warnings);
        WriteObject(Describe(plan, file, layers), enumerateCollection: true);
        return [];
    }

    /// <inheritdoc/>
    private protected override void WriteResult(LayerFile file)
    {
        if (!Preview) base.WriteResult(file);
    }
}
