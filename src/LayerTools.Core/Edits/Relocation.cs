using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>
/// Layers on their way to another place in the tree, with what must go along so that clipping stays what it is:
/// a base takes the layers clipped to it along, and a clipped layer whose base stays behind is released from its clipping.
/// </summary>
internal sealed class Relocation
{
    private readonly List<(Layer Layer, string Place)> before;
    private readonly HashSet<Layer> moved;

    private Relocation(List<Layer> layers, HashSet<Layer> chosen)
    {
        Layers = layers;
        moved = [.. layers];
        TakenAlong = layers.Where(layer => !chosen.Contains(layer)).ToList();
        Released = layers.Where(layer => layer.Clipped && (ClippingRun.Of(layer).Base is not { } @base || !moved.Contains(@base))).ToList();
        before = layers.Select(layer => (layer, Describe(layer))).ToList();
    }

    /// <summary>The layers that move, front to back; none lies in another.</summary>
    public IReadOnlyList<Layer> Layers { get; }

    /// <summary>The clipped layers that move because their base does.</summary>
    public IReadOnlyList<Layer> TakenAlong { get; }

    /// <summary>The clipped layers that lose their base.</summary>
    public IReadOnlyList<Layer> Released { get; private set; }

    public static Relocation Of(LayerFile file, IReadOnlyList<Layer> layers)
    {
        var chosen = Selection.Outermost(Selection.InStackOrder(file, layers));
        var withRuns = chosen.SelectMany(layer => layer.Clipped ? [layer] : ClippingRun.Of(layer).Layers);
        return new Relocation(Selection.Outermost(Selection.InStackOrder(file, withRuns)), [.. chosen]);
    }

    /// <summary>Whether the layers lie side by side and nothing is released, so that a group around them changes nothing to see.</summary>
    public bool IsInOnePiece => Released.Count == 0 && Layers.Zip(Layers.Skip(1), (one, next) => next.Parent == one.Parent && next.IndexInParent == one.IndexInParent + 1).All(isNext => isNext);

    /// <summary>Whether all layers are among those clipped to one base.</summary>
    public bool IsWithin(ClippingRun run) => Layers.All(layer => layer.Clipped && run.Clipped.Contains(layer));

    /// <summary>Keeps the clipping of layers that stay with their base.</summary>
    public void KeepClipping() => Released = [];

    /// <summary>The layers of a group that stay, front to back.</summary>
    public List<Layer> FindStaying(Layer group) => group.GetChildren().Where(layer => !moved.Contains(layer)).ToList();

    /// <summary>The place nearest to an index that gives no clipped layer another base.</summary>
    /// <param name="siblings">The layers of a group, front to back.</param>
    /// <param name="index">The wanted place: in front of the layer with this index.</param>
    /// <param name="backwards">Whether to go behind the run; otherwise in front of it. Clipped layers without any base leave only the place in front.</param>
    public static int FindLegalIndex(IReadOnlyList<Layer> siblings, int index, bool backwards)
    {
        bool IsIllegal(int place) => place > 0 && siblings[place - 1].Clipped;

        var behind = index;
        while (backwards && behind < siblings.Count && IsIllegal(behind)) behind++;
        if (!IsIllegal(behind)) return behind;
        while (IsIllegal(index)) index--;
        return index;
    }

    /// <summary>The steps for what changes, given the group and the place in it that the layers will have.</summary>
    public IEnumerable<EditStep> DescribeSteps(Layer group, int index) => DescribeSteps(group.IsRoot ? string.Empty : group.LayerPath, index);

    /// <summary>The same for a group that is not there yet.</summary>
    public IEnumerable<EditStep> DescribeSteps(string groupPath, int index = 0)
    {
        var released = new HashSet<Layer>(Released);
        for (var i = 0; i < before.Count; i++)
        {
            var (layer, old) = before[i];
            var place = Describe(groupPath, index + i);
            if (place != old) yield return new EditStep(layer, "Place", old, place);
            if (released.Contains(layer)) yield return new EditStep(layer, "Clipped", "True", "False");
        }
    }

    /// <summary>Sentences about what happens beside the move.</summary>
    public IEnumerable<string> DescribeSideEffects()
    {
        if (TakenAlong.Count > 0) yield return $"Clipped layers go along with their base: {QuotedPaths.Join(TakenAlong)}.";
        if (Released.Count > 0) yield return $"Clipped layers leave their base and are no longer clipped: {QuotedPaths.Join(Released)}.";
    }

    /// <summary>Moves the layers.</summary>
    public void Apply(Layer group, int index)
    {
        foreach (var layer in Released) layer.Clipped = false;
        foreach (var layer in Layers) layer.Detach();
        for (var i = 0; i < Layers.Count; i++) group.Insert(index + i, Layers[i]);
    }

    private static string Describe(Layer layer) => Describe(layer.GetParent()?.LayerPath ?? string.Empty, layer.IndexInParent);

    private static string Describe(string groupPath, int index) =>
        FormattableString.Invariant($"{(groupPath.Length == 0 ? "outermost" : groupPath)}, place {index + 1}");
}
