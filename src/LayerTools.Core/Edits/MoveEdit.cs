using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>
/// Moves layers to another place in the stack; their order among each other stays.
/// Clipping stays legal: a base takes the layers clipped to it along; a clipped layer that is moved without its base is released from its
/// clipping, unless it only changes its place among the layers clipped to the same base; and nothing is put between a base and the layers
/// clipped to it: before one of them means in front of all of them, after one means behind their base.
/// </summary>
public sealed class MoveEdit : LayerEdit
{
    private readonly MovePlace place;
    private readonly Layer target;

    /// <param name="place">Where the layers go.</param>
    /// <param name="target">The layer that the place is seen from.</param>
    public MoveEdit(MovePlace place, Layer target)
    {
        this.place = place;
        this.target = target ?? throw new ArgumentNullException(nameof(target));
    }

    /// <inheritdoc/>
    public override EditPlan Plan(LayerFile file, IReadOnlyList<Layer> layers)
    {
        var relocation = Relocation.Of(file, layers);
        if (relocation.Layers.Count == 0) return new EditPlan(file, [], changesPicture: false, () => { });
        Check(file, relocation);

        var group = place == MovePlace.Into ? target : target.Parent!;
        var staying = relocation.FindStaying(group);
        var wanted = place switch
        {
            MovePlace.Into => 0,
            MovePlace.Before => staying.IndexOf(target),
            _ => staying.IndexOf(target) + 1,
        };
        if (place != MovePlace.Into && relocation.IsWithin(ClippingRun.Of(target)) && (target.Clipped || place == MovePlace.Before)) relocation.KeepClipping();
        else wanted = Relocation.FindLegalIndex(staying, wanted, place == MovePlace.After);

        var steps = relocation.DescribeSteps(group, wanted).ToList();
        return new EditPlan(file, steps, changesPicture: true, () => relocation.Apply(group, wanted)) { Warnings = [.. relocation.DescribeSideEffects()] };
    }

    private void Check(LayerFile file, Relocation relocation)
    {
        const string Edit = "Moving";
        var refusal = new Refusal(file, Edit);
        if (target.File != file) refusal.Add($"the target '{target.LayerPath}' is in another file", "Choose a target in the same file.");
        if (place == MovePlace.Into && !target.IsGroup) refusal.Add($"the target '{target.LayerPath}' is no group", "Choose a group, or use -Before or -After.");
        foreach (var layer in relocation.Layers.Where(layer => Selection.IsIn(target, layer)))
        {
            refusal.Add(layer == target ? $"'{layer.LayerPath}' moves and is the target as well" : $"'{layer.LayerPath}' would move into itself, to '{target.LayerPath}'",
                "Choose a target outside of what moves; layers clipped to a base move along with it.");
        }

        refusal.ThrowIfAny();
    }
}
