using LayerTools.Measures.Stacking;
using LayerTools.Model;

namespace LayerTools.Checks.Rules;

/// <summary>A layer in another place of its group than the zones of the profile say.</summary>
internal sealed class StackOutOfOrder : CheckRule
{
    public override string Id => nameof(StackOutOfOrder);

    public override string Title => "The stack is out of order";

    public override string Reason => "Parts are stacked as the body is, front to back from hat and hair at the front to the back of hair and clothing (common practice; the zones are the profile's). The pieces of a thing that is worn or carried, like the badge on a hat, keep their order, and so does a name that speaks of two parts. Within each group the longest run that is in order counts as right, and what has to move is named, as Set-LayerOrder does it.";

    public override Severity DefaultSeverity => Severity.Warning;

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        var ranks = new StackRanks(context.Profile, context.NameOf);
        return
            from finding in new[] { context.File.Root }.Concat(context.File.GetLayers().Where(layer => layer.IsGroup)).SelectMany(outer => Check(context, outer, ranks))
            orderby finding.LayerNumber
            select finding;
    }

    private IEnumerable<Finding> Check(CheckContext context, Layer group, StackRanks ranks)
    {
        var order = GroupOrder.Of(group, ranks);
        var (blocks, sorted) = (order.Sorted.ToList(), order.Layers.ToList());
        foreach (var block in order.Moved)
        {
            var (old, place) = (block.Owner.IndexInParent + 1, sorted.IndexOf(block.Owner));
            // Beside another block: what is clipped to a layer lies right in front of it already.
            var index = blocks.IndexOf(block);
            var beside = index > 0 ? $"behind '{blocks[index - 1].Owner.Name}'" : $"in front of '{blocks[1].Owner.Name}'";
            var command = $"Set-LayerOrder -Profile {Quoted.Of(context.Profile.Path ?? context.Profile.Name)}";
            yield return Find(context, block.Owner, $"The layer is out of order; it belongs {beside}.", Remedy.Edit(context.File, command), FormattableString.Invariant($"place {old}"), FormattableString.Invariant($"place {place + 1}"));
        }
    }
}
