namespace LayerTools.Model;

/// <summary>Puts the layers that a user chose in order.</summary>
internal static class Selection
{
    /// <summary>The layers once each, front to back.</summary>
    /// <exception cref="ArgumentException">A layer is not in the file.</exception>
    public static List<Layer> InStackOrder(LayerFile file, IEnumerable<Layer> layers)
    {
        var ordered = layers.Distinct().OrderBy(layer => layer.LayerNumber).ToList();
        if (ordered.Find(layer => layer.File != file) is { } stranger) throw new ArgumentException($"The layer '{stranger.LayerPath}' is not in {file.Path}.", nameof(layers));
        return ordered;
    }

    /// <summary>The layers that lie in none of the others, in the order they came.</summary>
    public static List<Layer> Outermost(IReadOnlyCollection<Layer> layers)
    {
        var chosen = new HashSet<Layer>(layers);
        return layers.Where(layer => !Ancestors(layer).Any(chosen.Contains)).ToList();
    }

    /// <summary>Whether a layer is another one or lies in it.</summary>
    public static bool IsIn(Layer layer, Layer group) => layer == group || Ancestors(layer).Contains(group);

    private static IEnumerable<Layer> Ancestors(Layer layer)
    {
        for (var group = layer.Parent; group is { IsRoot: false }; group = group.Parent) yield return group;
    }
}
