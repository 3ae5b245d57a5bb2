using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Edits;

/// <summary>
/// Reflects parts across a vertical line, exact to the pixel: all channels, masks, paths and clipping, with swapped names all the way down and new ids.
/// <para>Of the chosen layers, the outermost whose names say the side are reflected, with all that is in them. A sided group whose opposite exists is
/// entered, and so is a group without a side: their layers are looked at one by one. A layer without a side inside a sided group belongs to that side.</para>
/// <para>A reflection goes directly behind its original and what is clipped to that, or, where the opposite group exists, to the corresponding place in it.
/// A base takes the layers clipped to it along; a clipped layer that is reflected without its base stays clipped, to the base's opposite or else to the same base.</para>
/// <para>Marks are not copied: a reflected part is not finished. Live text and placed content become plain pixels.</para>
/// </summary>
public sealed class MirrorEdit : LayerEdit
{
    private const string Edit = "Reflecting";

    /// <summary>The side that is copied.</summary>
    public Side From { get; init; } = Side.Left;

    /// <summary>x of the line, canvas px, a multiple of 0.5; null for the middle of the canvas.</summary>
    public double? Axis { get; init; }

    /// <summary>What happens to parts whose opposite is there.</summary>
    public MirrorExisting Existing { get; init; }

    /// <inheritdoc/>
    public override EditPlan Plan(LayerFile file, IReadOnlyList<Layer> layers)
    {
        var refusal = new Refusal(file, Edit);
        var doubledAxis = CheckOptions(file, refusal);
        refusal.ThrowIfAny();

        var chosen = Selection.InStackOrder(file, layers);
        var planner = new MirrorPlanner(file, [.. chosen], From, Existing, new MirrorCopier(file, doubledAxis, refusal), refusal);
        refusal.ThrowIfAny();

        var pairs = planner.Items.SelectMany(item => item.Block).SelectMany(pair => pair.Flatten()).ToList();
        var isWholeFile = chosen.Count == file.LayerCount;
        return new EditPlan(file, [.. planner.Items.SelectMany(item => DescribeSteps(item, planner.Opposites))], planner.Items.Any(item => IsSeen(item, planner.Opposites)), () => Apply(file, planner, pairs))
        {
            Warnings =
            [
                .. MirrorNotes.Describe(pairs),
                .. MirrorNotes.DescribeLeftBehind(planner),
                .. MirrorNotes.DescribeElsewhere(file, planner.Items),
                .. isWholeFile ? [] : MirrorNotes.DescribeUntouched(planner, From.ToString()),
            ],
            Results = [.. planner.Items.SelectMany(item => item.Block).Select(pair => pair.Copy)],
        };
    }

    private static void Apply(LayerFile file, MirrorPlanner planner, List<MirrorPair> pairs)
    {
        // All that can fail comes before the first change to the tree.
        var planes = MirrorPixels.Reflect(file, pairs);
        for (var i = 0; i < pairs.Count; i++) pairs[i].Copy.Planes = [.. planes[i]];
        var attachment = new MirrorAttachment(planner.Opposites);
        foreach (var item in planner.Items) attachment.Attach(item);
    }

    private static IEnumerable<EditStep> DescribeSteps(MirrorItem item, IReadOnlyDictionary<Layer, Layer> opposites)
    {
        if (item.Place is MirrorPlace.InsteadOf { Existing: var existing })
        {
            var (source, copy) = (item.Block[0].Source, item.Block[0].Copy);
            yield return new EditStep(existing, "Pixels", existing.Bounds.ToString(), $"{copy.Bounds}, reflected from '{source.LayerPath}'");
            if (existing.Mark != Mark.None) yield return new EditStep(existing, "Mark", existing.Mark.ToString(), Mark.None.ToString());
            yield break;
        }

        var group = item.FindGroup(opposites);
        var prefix = group.IsRoot ? string.Empty : group.LayerPath + "/";
        foreach (var pair in item.Block.SelectMany(pair => pair.Flatten())) yield return new EditStep(pair.Copy, "Layer", null, prefix + pair.Copy.LayerPath);
    }

    private static bool IsSeen(MirrorItem item, IReadOnlyDictionary<Layer, Layer> opposites)
    {
        var group = item.FindGroup(opposites);
        var isReplacedSeen = item.Place is MirrorPlace.InsteadOf { Existing.Visible: true };
        return (group.IsRoot || group.EffectivelyVisible) && (isReplacedSeen || item.Block.Any(pair => pair.Copy.Visible));
    }

    private int CheckOptions(LayerFile file, Refusal refusal)
    {
        if (From is not (Side.Left or Side.Right)) refusal.Add("the side to copy is neither Left nor Right", "Use -From Left or -From Right.");
        var doubled = (Axis ?? file.Axis) * 2;
        if (doubled is >= -int.MaxValue and <= int.MaxValue && Math.Floor(doubled) == doubled) return (int)doubled;
        refusal.Add(FormattableString.Invariant($"the axis {Axis} is no multiple of 0.5 px"), "Name an x in whole or half pixels.");
        return 0;
    }
}
