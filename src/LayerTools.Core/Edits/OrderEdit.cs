using LayerTools.Measures.Stacking;
using LayerTools.Model;
using LayerTools.Profiles;

namespace LayerTools.Edits;

/// <summary>
/// Puts the layers within each group into the order of a profile's zones, moving as little as possible.
/// <para>A layer belongs where the zone of the part lies that its name says; a group where its name says, or else where all names in it agree. Layers of one zone keep their order.
/// What belongs nowhere moves along with the layer behind it, which it lies on; at the back of a group it stays, and so do sketches, guides, adjustments and fills in front of all. A base takes the layers clipped to it along.</para>
/// <para>The longest run that is in order already stays, so that no other order takes fewer moves.</para>
/// <para>With the whole file every group and the outermost layers are put in order. Otherwise each chosen group with all groups in it; a chosen layer stands for the group around it.</para>
/// </summary>
public sealed class OrderEdit : LayerEdit
{
    private const string Edit = "Ordering";
    private readonly LayerProfile profile;

    /// <param name="profile">The order of the zones, and the words that tell which zone a layer is in.</param>
    public OrderEdit(LayerProfile profile) => this.profile = profile ?? throw new ArgumentNullException(nameof(profile));

    /// <inheritdoc/>
    public override EditPlan Plan(LayerFile file, IReadOnlyList<Layer> layers)
    {
        if (profile.Stack.Count == 0) throw Refusal.Create(file, Edit, $"the profile '{profile.Name}' has no order of zones", "List them front to back as its stack.");
        if (profile.Naming.Vocabulary.Parts.Count == 0) throw Refusal.Create(file, Edit, $"the profile '{profile.Name}' has no words for parts", "Use a profile with a vocabulary.");
        foreach (var layer in layers.Where(layer => layer.File != file)) throw Refusal.Create(file, Edit, $"'{layer.LayerPath}' is not in it", "Read the file again.");

        var ranks = new StackRanks(profile);
        var orders = FindGroups(file, layers).Select(group => (Group: group, Order: GroupOrder.Of(group, ranks))).Where(order => order.Order.Moved.Count > 0).ToList();
        return new EditPlan(file, [.. orders.SelectMany(order => Describe(order.Group, order.Order))], changesPicture: orders.Count > 0, () =>
        {
            foreach (var (group, order) in orders) Apply(group, [.. order.Layers]);
        })
        {
            Warnings = [.. OrderNotes.Describe([.. orders.Select(order => order.Order)])],
        };
    }

    private static IEnumerable<Layer> FindGroups(LayerFile file, IReadOnlyList<Layer> layers)
    {
        var found = new HashSet<Layer>(layers.Select(layer => layer.IsGroup ? layer : layer.Parent!));
        if (new HashSet<Layer>(layers).Count == file.LayerCount) found.Add(file.Root);
        foreach (var group in layers.Where(layer => layer.IsGroup)) found.UnionWith(group.GetLayers().Where(inner => inner.IsGroup));
        return new[] { file.Root }.Concat(file.GetLayers()).Where(found.Contains);
    }

    private static void Apply(Layer group, IReadOnlyList<Layer> sorted)
    {
        for (var i = 0; i < sorted.Count; i++)
        {
            if (group.GetChildren()[i] == sorted[i]) continue;
            sorted[i].Detach();
            group.Insert(i, sorted[i]);
        }
    }

    private static IEnumerable<EditStep> Describe(Layer group, GroupOrder order)
    {
        var sorted = order.Layers.ToList();
        var place = group.IsRoot ? "outermost" : group.LayerPath;
        foreach (var layer in order.Moved.SelectMany(block => block.Layers))
        {
            var index = sorted.IndexOf(layer);
            var beside = index > 0 ? $"behind '{sorted[index - 1].Name}'" : $"in front of '{sorted[1].Name}'";
            yield return new EditStep(layer, "Place", FormattableString.Invariant($"{place}, place {layer.IndexInParent + 1}"), FormattableString.Invariant($"{place}, place {index + 1}, {beside}"));
        }
    }
}
