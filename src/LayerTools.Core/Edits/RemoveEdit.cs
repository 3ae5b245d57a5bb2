using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>
/// Removes layers, and groups with all that is in them. Layers that were clipped to a removed one stay, since somebody painted them,
/// but are released from their clipping, with a warning: otherwise they would silently clip to whatever lies behind.
/// </summary>
public sealed class RemoveEdit : LayerEdit
{
    /// <inheritdoc/>
    public override EditPlan Plan(LayerFile file, IReadOnlyList<Layer> layers)
    {
        var removed = Selection.Outermost(Selection.InStackOrder(file, layers));
        var gone = new HashSet<Layer>(removed);
        var released = removed.Where(layer => !layer.Clipped).SelectMany(layer => ClippingRun.Of(layer).Clipped).Where(layer => !gone.Contains(layer)).ToList();

        var steps = removed.SelectMany(layer => new[] { layer }.Concat(layer.GetLayers())).Select(layer => new EditStep(layer, "Layer", layer.Name, null))
            .Concat(released.Select(layer => new EditStep(layer, "Clipped", "True", "False")))
            .OrderBy(step => step.Layer!.LayerNumber).ToList();
        return new EditPlan(file, steps, changesPicture: true, () =>
        {
            foreach (var layer in released) layer.Clipped = false;
            foreach (var layer in removed) layer.Detach();
        })
        {
            Warnings = released.Count == 0 ? [] : [$"The base of these layers is removed, so they are no longer clipped: {QuotedPaths.Join(released)}."],
            Results = [],
        };
    }
}
