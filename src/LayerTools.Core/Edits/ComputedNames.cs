using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>Names from a function.</summary>
internal sealed class ComputedNames(Func<Layer, int, string?> rename) : NameSource
{
    public override IReadOnlyList<(Layer Layer, string Name)> Propose(LayerFile file, IReadOnlyList<Layer> layers, int firstNumber, List<string> warnings)
    {
        var proposals = new List<(Layer, string)>();
        foreach (var layer in layers)
        {
            if (rename(layer, firstNumber + proposals.Count) is { } name) proposals.Add((layer, name));
        }

        return proposals;
    }
}
