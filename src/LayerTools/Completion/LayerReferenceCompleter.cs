using LayerTools.Model;

namespace LayerTools.Completion;

/// <summary>Completes the path of the one layer that is meant, from the beginning of its path or of its name; only groups, where something goes into it.</summary>
public sealed class LayerReferenceCompleter : LayerCompleter
{
    private protected override string GetText(Layer layer) => layer.LayerPath;

    private protected override string ToPattern(string text) => text;

    private protected override bool Fits(Layer layer, string typed, string parameterName) =>
        (layer.Kind == LayerKind.Group || !string.Equals(parameterName, "Into", StringComparison.OrdinalIgnoreCase))
        && (base.Fits(layer, typed, parameterName) || layer.Name.StartsWith(typed, StringComparison.OrdinalIgnoreCase));
}
