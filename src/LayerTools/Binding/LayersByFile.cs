using LayerTools.Model;

namespace LayerTools.Binding;

/// <summary>Layers sorted by the file they belong to.</summary>
internal static class LayersByFile
{
    /// <summary>Each file once, in the order its first layer came; each of its layers once.</summary>
    public static IEnumerable<(LayerFile File, IReadOnlyList<Layer> Layers)> Group(IEnumerable<Layer> layers) =>
        layers.GroupBy(layer => layer.GetFile()!).Select(group => (group.Key, (IReadOnlyList<Layer>)group.Distinct().ToList()));
}
