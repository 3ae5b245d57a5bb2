using LayerTools.Edits;
using LayerTools.Model;

namespace LayerTools.Binding;

/// <summary>A cmdlet that edits chosen layers and passes on what came in.</summary>
public abstract class LayerEditCommand : LayerSelectionCommand
{
    private EditRunner? runner;

    private protected LayerEditCommand()
    {
    }

    /// <summary>What the edit does, for a question: "Rename layers".</summary>
    private protected abstract string Action { get; }

    /// <summary>Whether a file without a choice of layers is refused, because all its layers cannot be meant.</summary>
    private protected virtual bool NeedsSelection => false;

    private protected EditRunner Runner => runner ??= new EditRunner(this, Action);

    /// <summary>Makes the edit for one file.</summary>
    private protected abstract LayerEdit CreateEdit(LayerFile file);

    /// <summary>Edits one file.</summary>
    /// <param name="file">The file.</param>
    /// <param name="layers">The chosen layers.</param>
    /// <returns>The layers to pass on instead of those that came in, or null.</returns>
    private protected virtual IReadOnlyList<Layer>? Edit(LayerFile file, IReadOnlyList<Layer> layers) => Runner.Run(CreateEdit(file), file, layers);

    /// <inheritdoc/>
    private protected override void ProcessFile(LayerFile file)
    {
        var filter = Filter;
        if (NeedsSelection && filter.IsEmpty) throw new RefusedException(ErrorRecords.SelectionMissing(MyInvocation.MyCommand.Name, file));
        Edit(file, filter.Apply(file.Name, file.GetLayers().ToList()));
        WriteResult(file);
    }

    /// <inheritdoc/>
    private protected override void ProcessLayers(IReadOnlyList<Layer> layers) =>
        Runner.RunAll(layers, (file, ofFile) => Edit(file, Filter.Apply(file.Name, ofFile)));

    /// <summary>Passes an edited file on.</summary>
    private protected virtual void WriteResult(LayerFile file) => WriteObject(file);
}
