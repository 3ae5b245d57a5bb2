using LayerTools.Model;

namespace LayerTools.Binding;

/// <summary>An edit that can hold all files until the last one is there, because what becomes of one counts on the others.</summary>
public abstract class HoldingEditCommand : PreviewedEditCommand
{
    private readonly HeldFiles held = new();

    private protected HoldingEditCommand()
    {
    }

    /// <summary>Whether files are held.</summary>
    private protected abstract bool HoldsFiles { get; }

    /// <summary>Makes ready for the edits of files that are all there.</summary>
    private protected abstract void Prepare(HeldFiles files);

    /// <inheritdoc/>
    private protected override void ProcessFile(LayerFile file)
    {
        if (HoldsFiles) held.Add(file, Filter.Apply(file.Name, file.GetLayers().ToList()));
        else base.ProcessFile(file);
    }

    /// <inheritdoc/>
    private protected override void ProcessLayers(IReadOnlyList<Layer> layers)
    {
        if (!HoldsFiles)
        {
            base.ProcessLayers(layers);
            return;
        }

        var together = new HeldFiles();
        foreach (var (file, ofFile) in LayersByFile.Group(layers)) Try(file, () => together.Add(file, Filter.Apply(file.Name, ofFile)));
        Prepare(together);
        Runner.RunAll([.. layers.Where(together.HasFileOf)], (file, _) => Edit(file, together.LayersOf(file)));
    }

    /// <inheritdoc/>
    protected override void EndProcessing()
    {
        ThrowIfStopping();
        if (held.Files.Count > 0) Prepare(held);
        foreach (var file in held.Files)
        {
            Try(file, () =>
            {
                Edit(file, held.LayersOf(file));
                WriteResult(file);
            });
        }

        base.EndProcessing();
    }
}
