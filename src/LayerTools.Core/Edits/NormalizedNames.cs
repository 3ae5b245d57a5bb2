using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Edits;

/// <summary>Works out new names in a profile's form, group by group, or over the groups of several files that stand for each other.</summary>
/// <param name="style">The form.</param>
internal sealed class NormalizedNames(NamingStyle style)
{
    private readonly NameNormalizer normalizer = new(style);

    /// <summary>What becomes of each chosen layer.</summary>
    /// <param name="selections">The chosen layers of each file.</param>
    /// <param name="consistent">Whether the same part gets the same number in all files.</param>
    public IReadOnlyDictionary<Layer, NormalizedLayer> Find(IReadOnlyList<IReadOnlyList<Layer>> selections, bool consistent)
    {
        var results = new Dictionary<Layer, NormalizedLayer>();
        var groups = new List<(string Path, NormalizedGroup Group)>();
        var most = consistent ? selections.Sum(layers => layers.Count) : 0;
        foreach (var ofGroup in selections.SelectMany(layers => layers.GroupBy(layer => layer.Parent!)))
        {
            var children = ofGroup.Key.GetChildren();
            // No number gets larger, since each of so many numbers would have to be in use.
            var largest = style.FirstNumber + Math.Max(most, children.Count);
            var names = ofGroup.ToDictionary(layer => layer, layer => normalizer.Normalize(layer.Name, largest));
            groups.Add((consistent ? DescribePath(ofGroup.Key) : string.Empty, new NormalizedGroup(children, names, results)));
        }

        if (consistent) foreach (var alike in groups.GroupBy(item => item.Path, StringComparer.OrdinalIgnoreCase)) Number([.. alike.Select(item => item.Group)]);
        else foreach (var (_, group) in groups) Number([group]);
        return results;
    }

    private void Number(IReadOnlyList<NormalizedGroup> alike)
    {
        var runs = new Dictionary<string, NumberedRun>(StringComparer.OrdinalIgnoreCase);
        var inOrder = new List<NumberedRun>();
        foreach (var group in alike)
        {
            foreach (var members in group.Members.GroupBy(member => member.Name.Stem, StringComparer.OrdinalIgnoreCase))
            {
                if (!runs.TryGetValue(members.Key, out var run))
                {
                    runs.Add(members.Key, run = new NumberedRun(normalizer, style.FirstNumber));
                    inOrder.Add(run);
                }

                run.Add(group, members);
            }
        }

        foreach (var run in inOrder) run.Number();
    }

    /// <summary>The names of a group and those it lies in, as they would be written, so that "Hair" and "hairs" of two files are the same group.</summary>
    private string DescribePath(Layer group)
    {
        var names = new List<string>();
        for (var at = group; at?.Parent is not null; at = at.Parent)
        {
            var name = normalizer.Normalize(at.Name, 0);
            names.Add(name.Form is null ? at.Name : normalizer.Write(name, name.Form.Number));
        }

        names.Reverse();
        return string.Join("\n", names);
    }
}
