using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Edits;

/// <summary>
/// What stands on the other side for the layers of one group. Sided names have the opposite that the whole file gives them; a layer
/// without a side inside a group whose opposite exists belongs to that group's side, and its opposite is its namesake there.
/// </summary>
internal sealed class MirrorOpposites(LayerFile file, Side from)
{
    private readonly Opposites bySide = new(file);
    private readonly Dictionary<Layer, Layer> found = [];

    public IReadOnlyDictionary<Layer, Layer> Found => found;

    public Layer? this[Layer layer] => found.TryGetValue(layer, out var opposite) ? opposite : null;

    /// <summary>Finds the opposites of a group's layers.</summary>
    /// <param name="group">The group.</param>
    /// <param name="opposite">Its opposite, if it is or lies in a sided group that has one.</param>
    public void Match(Layer group, Layer? opposite)
    {
        foreach (var layer in group.GetChildren().Where(layer => layer.Side == from))
        {
            if (bySide.Find(layer) is { } other) found[layer] = other;
        }

        if (opposite is not null) PairNamesakes(Unsided(group.GetChildren(), clipped: false), Unsided(opposite.GetChildren(), clipped: false));
        foreach (var @base in group.GetChildren().Where(layer => !layer.Clipped && found.ContainsKey(layer)))
        {
            PairNamesakes(Unsided(ClippingRun.Of(@base).Clipped, clipped: true), Unsided(ClippingRun.Of(found[@base]).Clipped, clipped: true));
        }
    }

    private static List<Layer> Unsided(IEnumerable<Layer> layers, bool clipped) => layers.Where(layer => layer.Side == Side.None && layer.Clipped == clipped).ToList();

    private void PairNamesakes(List<Layer> layers, List<Layer> others)
    {
        foreach (var layer in layers)
        {
            // Several layers of one name pair up in stack order.
            var other = others.Find(candidate => string.Equals(candidate.Name, layer.Name, StringComparison.OrdinalIgnoreCase));
            if (other is null) continue;
            others.Remove(other);
            found[layer] = other;
        }
    }
}
