using LayerTools.Measures;
using LayerTools.Model;
using LayerTools.Profiles;

namespace LayerTools.Ledgers;

/// <summary>
/// How the state of a part follows from its entry, its content and its mark. In this order:
/// <list type="number">
/// <item>A mark that the layer did not have when the entry was written is newer than the ledger, and means what the profile says; one without a meaning there says nothing.</item>
/// <item>A mark that is gone while the file has others makes <see cref="PartState.Done"/> a <see cref="PartState.Recheck"/>; where the file has no mark at all, it lost them, and that says nothing.</item>
/// <item>A part that was done and whose pixels or mask changed is to be rechecked. A new name, place, or place in the stack is no change.</item>
/// <item>Else the state is the entry's.</item>
/// </list>
/// A part without an entry has the state that its mark means, else it is done if its name says so, else it is open.
/// </summary>
/// <param name="meanings">What marks mean.</param>
/// <param name="options">Which layers are no parts, and which names mean finished.</param>
public sealed class LedgerRules(IReadOnlyDictionary<Mark, MarkMeaning> meanings, StatusOptions options)
{
    internal StatusOptions Options => options;

    /// <summary>The state of a part that has an entry.</summary>
    internal PartState Resolve(LedgerEntry entry, Layer layer, LedgerParts parts)
    {
        var mark = FindMark(layer);
        if (TellNewer(entry, mark) is { } newer) return newer;
        if (entry.State != PartState.Done) return entry.State;
        var lostMark = mark == Mark.None && entry.Mark != Mark.None && parts.HasMarks;
        return !lostMark && parts.Holds(layer, entry) ? PartState.Done : PartState.Recheck;
    }

    /// <summary>What a mark says that is newer than the entry; null where there is none, or it says nothing.</summary>
    internal PartState? TellNewer(LedgerEntry entry, Mark mark) => mark == entry.Mark ? null : Tell(mark);

    /// <summary>The state of a part that has no entry.</summary>
    internal PartState Start(Layer layer) => Tell(FindMark(layer)) ?? (options.DoneName?.IsMatch(layer.Name) == true ? PartState.Done : PartState.Open);

    /// <summary>What a mark means; null where it means nothing.</summary>
    internal PartState? Tell(Mark mark) => !meanings.TryGetValue(mark, out var meaning) ? null : meaning switch
    {
        MarkMeaning.Done => PartState.Done,
        MarkMeaning.Recheck => PartState.Recheck,
        _ => PartState.Open,
    };

    /// <summary>The mark that a part should carry by its entry: the one it had if that means its state, else the first that does, else the one it had.</summary>
    internal Mark Choose(LedgerEntry entry)
    {
        if (Tell(entry.Mark) == entry.State || (entry.State == PartState.Open && Tell(entry.Mark) is null)) return entry.Mark;
        return meanings.Keys.OrderBy(mark => mark).FirstOrDefault(mark => Tell(mark) == entry.State) is var mark and not Mark.None ? mark : entry.Mark;
    }

    /// <summary>A layer's mark, or where it has none that of the nearest group around it that has one.</summary>
    internal static Mark FindMark(Layer layer)
    {
        var marked = layer;
        while (marked.Mark == Mark.None && marked.GetParent() is { } group) marked = group;
        return marked.Mark;
    }
}
