using LayerTools.Model;

namespace LayerTools.Completion;

/// <summary>Completes layer paths where every character stands for itself.</summary>
public sealed class LiteralLayerPathCompleter : LayerCompleter
{
    private protected override string GetText(Layer layer) => layer.LayerPath;

    private protected override string ToPattern(string text) => text;
}
