using LayerTools.Names;

namespace LayerTools.Edits;

/// <summary>
/// Layers that would have one name but for their number, in one group, or in the groups of several files that stand for each other.
/// Numbers that tell them apart already are kept; the others get the smallest free ones in stack order. Layers of different files are the same part if they
/// have the same number, or neither has one and they had the same name; among such that are equal even then, the stack decides.
/// </summary>
/// <param name="normalizer">Writes the names.</param>
/// <param name="firstNumber">The smallest number to give.</param>
internal sealed class NumberedRun(NameNormalizer normalizer, int firstNumber)
{
    private readonly List<(NormalizedGroup Group, NormalizedGroup.Member Member, Key Key)> members = [];

    /// <summary>Adds the layers of one group, front to back.</summary>
    public void Add(NormalizedGroup group, IEnumerable<NormalizedGroup.Member> ofGroup)
    {
        var counts = new Dictionary<(int?, string), int>();
        foreach (var member in ofGroup)
        {
            var number = member.Name.Form!.Number;
            var same = (number, number is null ? Folding.Fold(member.Layer.Name) : string.Empty);
            counts.TryGetValue(same, out var before);
            counts[same] = before + 1;
            members.Add((group, member, new Key(same.Item1, same.Item2, before)));
        }
    }

    /// <summary>Gives every layer its new name.</summary>
    public void Number()
    {
        var needsNumbers = members.GroupBy(item => item.Group).Any(ofGroup => ofGroup.Count() > 1) || members.Any(item => item.Key.Number is not null);
        var parts = members.GroupBy(item => item.Key).Select(part => part.ToList()).ToList();
        var used = new HashSet<int>();
        var open = new List<List<(NormalizedGroup Group, NormalizedGroup.Member Member, Key Key)>>();
        foreach (var part in parts)
        {
            var number = part[0].Key.Number;
            if (number is { } own && !used.Contains(own) && IsFree(part, own)) Name(part, own, used);
            else if (number is null && !needsNumbers && IsFree(part, null)) Name(part, null, used);
            else open.Add(part);
        }

        var next = firstNumber;
        foreach (var part in open)
        {
            while (used.Contains(next) || !IsFree(part, next)) next++;
            Name(part, next, used);
        }
    }

    private bool IsFree(List<(NormalizedGroup Group, NormalizedGroup.Member Member, Key Key)> part, int? number) =>
        part.TrueForAll(item => item.Group.IsFree(normalizer.Write(item.Member.Name, number)));

    private void Name(List<(NormalizedGroup Group, NormalizedGroup.Member Member, Key Key)> part, int? number, HashSet<int> used)
    {
        if (number is { } taken) used.Add(taken);
        foreach (var (group, member, key) in part) group.Give(member, normalizer.Write(member.Name, number), isNumbered: number != key.Number);
    }

    /// <summary>What makes layers of different files the same part, and layers of one group different ones.</summary>
    private sealed record Key(int? Number, string OldName, int Occurrence);
}
