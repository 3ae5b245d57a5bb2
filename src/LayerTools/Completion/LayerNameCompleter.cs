using LayerTools.Model;

namespace LayerTools.Completion;

/// <summary>Completes layer names.</summary>
public sealed class LayerNameCompleter : LayerCompleter
{
    private protected override string GetText(Layer layer) => layer.Name;
}
