using LayerTools.Measures.Stacking;
using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>What a user should know about a new order, beside the moves.</summary>
internal static class OrderNotes
{
    public static IEnumerable<string> Describe(IReadOnlyList<GroupOrder> orders)
    {
        var along = orders.SelectMany(order => order.Moved).SelectMany(block => block.Layers.Where(layer => layer != block.Owner && !(layer.Clipped && ClippingRun.Of(layer).Base == block.Owner))).ToList();
        if (along.Count > 0) yield return $"These layers are in no zone of the profile and move along with what they lie on: {QuotedPaths.Join(along)}.";
        var mixing = orders.SelectMany(FindMixing).ToList();
        if (mixing.Count > 0) yield return $"These layers change the colours below them, and other layers lie below them now, so that the picture changes: {QuotedPaths.Join(mixing)}.";
    }

    /// <summary>Layers that mix with what lies below, whose place among the other blocks changes.</summary>
    private static IEnumerable<Layer> FindMixing(GroupOrder order)
    {
        var places = order.Sorted.Select((block, i) => (block, i)).ToDictionary(pair => pair.block, pair => pair.i);
        for (var i = 0; i < order.Blocks.Count; i++)
        {
            var mixing = order.Blocks[i].Layers.Where(layer => !layer.Clipped && MixesBelow(layer)).ToList();
            if (mixing.Count == 0) continue;
            var place = places[order.Blocks[i]];
            var isPassed = order.Blocks.Where((other, k) => k != i && (k < i) != (places[other] < place)).Any();
            foreach (var layer in isPassed ? mixing : []) yield return layer;
        }
    }

    private static bool MixesBelow(Layer layer)
    {
        if (layer.Kind == LayerKind.Adjustment || (layer.Detail.Features & (LayerFeatures.Knockout | LayerFeatures.BlendingRanges)) != 0) return true;
        // What lies in a pass-through group mixes with what lies below the group.
        if (layer.IsGroup && layer.BlendMode == BlendMode.PassThrough) return layer.GetChildren().Any(child => !child.Clipped && MixesBelow(child));
        return layer.BlendMode is not (BlendMode.Normal or BlendMode.PassThrough);
    }
}
