using LayerTools.Model;

namespace LayerTools.Completion;

/// <summary>Completes layer paths where wildcards are allowed.</summary>
public sealed class LayerPathCompleter : LayerCompleter
{
    private protected override string GetText(Layer layer) => layer.LayerPath;

    private protected override bool Fits(Layer layer, string typed, string parameterName) =>
        base.Fits(layer, typed, parameterName) || layer.Name.StartsWith(typed, StringComparison.OrdinalIgnoreCase);
}
