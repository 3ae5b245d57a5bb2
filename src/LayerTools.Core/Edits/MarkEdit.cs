using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>Gives each of several layers a colour mark of its own.</summary>
/// <param name="marks">The layers that get a mark, and which; of these, those that are chosen.</param>
internal sealed class MarkEdit(IReadOnlyDictionary<Layer, Mark> marks) : LayerEdit
{
    /// <inheritdoc/>
    public override EditPlan Plan(LayerFile file, IReadOnlyList<Layer> layers)
    {
        var changed = Selection.InStackOrder(file, layers).Where(layer => marks.TryGetValue(layer, out var mark) && mark != layer.Mark).ToList();
        return new EditPlan(file, [.. changed.Select(layer => new EditStep(layer, nameof(Mark), layer.Mark.ToString(), marks[layer].ToString()))], changesPicture: false, () =>
        {
            foreach (var layer in changed) layer.Mark = marks[layer];
        });
    }
}
