using System.Management.Automation;
using LayerTools.Model;

namespace LayerTools.Binding;

/// <summary>A cmdlet that takes layered files, each at once, or layers, which are collected until the stream ends.</summary>
public abstract class LayerInputCommand : LayerToolsCommand
{
    private readonly List<Layer> collected = [];
    private bool saidFactsOnly;

    private protected LayerInputCommand()
    {
    }

    /// <summary>Layered files from Get-LayerFile, or layers from Get-Layer.</summary>
    /// <remarks>Neither typed closer nor mandatory, so that a path, a copy from another process or nothing at all can be refused in words that help.</remarks>
    [Parameter(ValueFromPipeline = true)]
    public PSObject? InputObject { get; set; }

    /// <inheritdoc/>
    protected override void ProcessRecord()
    {
        if (InputObject is null)
        {
            var missing = ErrorRecords.InputMissing(MyInvocation.MyCommand.Name);
            if (!MyInvocation.ExpectingInput) ThrowTerminatingError(missing);
            WriteError(missing);
        }
        else if (LanguagePrimitives.GetEnumerable(InputObject) is { } items)
        {
            foreach (var item in items) ProcessItem(PSObject.AsPSObject(item));
        }
        else
        {
            ProcessItem(InputObject);
        }
    }

    /// <inheritdoc/>
    protected override void EndProcessing()
    {
        ThrowIfStopping();
        if (collected.Count > 0) ProcessLayers(collected);
    }

    /// <summary>Works on a whole file.</summary>
    private protected abstract void ProcessFile(LayerFile file);

    /// <summary>Works on all layers that came in, in the order they came.</summary>
    private protected abstract void ProcessLayers(IReadOnlyList<Layer> layers);

    /// <summary>Works on something else that makes sense to this cmdlet.</summary>
    /// <returns>Whether it made sense.</returns>
    private protected virtual bool TryProcessOther(object item) => false;

    private void ProcessItem(PSObject item)
    {
        switch (item.BaseObject)
        {
            case LayerFile file:
                Try(file, () => ProcessFile(file));
                break;
            case Layer layer when layer.GetFile() is null:
                WriteError(ErrorRecords.LayerWithoutFile(layer));
                break;
            case Layer layer:
                collected.Add(layer);
                break;
            case var other when TryProcessOther(other):
                break;
            case var _ when item.TypeNames.Any(name => name.StartsWith("Deserialized.", StringComparison.Ordinal)):
                // Once is enough: a hundred layers come back the same way.
                if (!saidFactsOnly) WriteError(ErrorRecords.FactsOnly(item));
                saidFactsOnly = true;
                break;
            default:
                WriteError(ErrorRecords.NotALayer(MyInvocation.MyCommand.Name, item));
                break;
        }
    }
}
