using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>Names from a list: pairs of names, which hold all at once, and rows of a change list, which are replayed one after the other.</summary>
internal sealed class ListedNames : NameSource
{
    private const int MostTold = 5;

    private readonly List<RenameEntry> pairs;
    private readonly List<RenameEntry> rows;

    public ListedNames(IEnumerable<RenameEntry> entries, bool reverse)
    {
        var wanted = entries.Where(entry => entry.IsAboutName).ToList();
        if (reverse) wanted = wanted.AsEnumerable().Reverse().Select(entry => entry.Reversed).ToList();
        pairs = wanted.Where(entry => !entry.PointsAtOneLayer).ToList();
        rows = wanted.Where(entry => entry.PointsAtOneLayer).ToList();
    }

    public override IReadOnlyList<(Layer Layer, string Name)> Propose(LayerFile file, IReadOnlyList<Layer> layers, int firstNumber, List<string> warnings)
    {
        var names = new Dictionary<Layer, string>();
        ApplyPairs(file, layers, names);
        ReplayRows(layers, names, warnings);
        return layers.Where(names.ContainsKey).Select(layer => (layer, names[layer])).ToList();
    }

    private void ApplyPairs(LayerFile file, IReadOnlyList<Layer> layers, Dictionary<Layer, string> names)
    {
        var exact = CreateLookup(file, StringComparer.Ordinal);
        var loose = pairs.GroupBy(pair => pair.Old, StringComparer.OrdinalIgnoreCase).ToDictionary(same => same.Key, same => same.First().New, StringComparer.OrdinalIgnoreCase);
        foreach (var layer in layers)
        {
            if (exact.TryGetValue(layer.LayerPath, out var name) || exact.TryGetValue(layer.Name, out name)
                || loose.TryGetValue(layer.LayerPath, out name) || loose.TryGetValue(layer.Name, out name)) names[layer] = name;
        }
    }

    private Dictionary<string, string> CreateLookup(LayerFile file, StringComparer comparer)
    {
        var refusal = new Refusal(file, "Renaming");
        var lookup = new Dictionary<string, string>(comparer);
        foreach (var pair in pairs)
        {
            if (lookup.TryGetValue(pair.Old, out var other) && other != pair.New)
            {
                refusal.Add($"the list gives '{pair.Old}' both the name '{other}' and the name '{pair.New}'", "Leave one row for each name, or tell layers apart by their path.");
            }

            lookup[pair.Old] = pair.New;
        }

        refusal.ThrowIfAny();
        return lookup;
    }

    private void ReplayRows(IReadOnlyList<Layer> layers, Dictionary<Layer, string> names, List<string> warnings)
    {
        string NameOf(Layer layer) => names.TryGetValue(layer, out var name) ? name : layer.Name;

        // Most rows are found by id or number; only the others need a look at every layer.
        var byId = layers.Where(layer => layer.Id is not null).ToLookup(layer => layer.Id!.Value);
        var byNumber = layers.ToDictionary(layer => layer.LayerNumber);
        var passedOver = new List<string>();
        foreach (var row in rows)
        {
            var found = (row.Id is { } id ? byId[id].FirstOrDefault(layer => NameOf(layer) == row.Old) : null)
                ?? (row.LayerNumber is { } number && byNumber.TryGetValue(number, out var numbered) && NameOf(numbered) == row.Old ? numbered : null)
                ?? FindByName(row, layers, names, NameOf);
            if (found is not null) names[found] = row.New;
            else passedOver.Add($"'{row.Old}' -> '{row.New}'");
        }

        // A list may hold the rows of many files, so that most of them fit nothing here.
        if (passedOver.Count == 0) return;
        var more = passedOver.Count > MostTold ? FormattableString.Invariant($" and {passedOver.Count - MostTold} more") : string.Empty;
        warnings.Add($"Rows of the list that fit no layer, or more than one, were passed over: {string.Join(", ", passedOver.Take(MostTold))}{more}.");
    }

    private static Layer? FindByName(RenameEntry row, IReadOnlyList<Layer> layers, Dictionary<Layer, string> names, Func<Layer, string> nameOf)
    {
        var named = layers.Where(layer => nameOf(layer) == row.Old).ToList();

        // While two layers swap names, both have the same one for a moment; the one whose turn it is was not renamed yet.
        var untouched = named.Where(layer => !names.ContainsKey(layer)).ToList();
        if (untouched.Count > 0) named = untouched;
        if (named.Count > 1) named = named.Where(layer => (layer.GetParent()?.LayerPath ?? string.Empty) == FindParentPath(row.LayerPath)).ToList();
        return named.Count == 1 ? named[0] : null;
    }

    /// <summary>A path less its last name; null without a path.</summary>
    private static string? FindParentPath(string? path)
    {
        var end = path?.LastIndexOf('/') ?? 0;
        while (end > 0 && path![end - 1] == '\\') end = path.LastIndexOf('/', end - 1);
        return end <= 0 && path is not null ? string.Empty : path?.Substring(0, end);
    }
}
