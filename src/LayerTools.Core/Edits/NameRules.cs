using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>What a layer may be called.</summary>
internal static class NameRules
{
    /// <summary>Most UTF-16 units of a name that every program shows whole.</summary>
    public const int LongestName = 255;

    public const string NameRemedy = "Give names of 1 to 255 characters that can be read.";

    public const string DuplicateRemedy = "Choose other names, or allow duplicates with -AllowDuplicate.";

    /// <summary>What is wrong with a name, to stand after "which"; null if nothing is.</summary>
    public static string? FindProblem(string name)
    {
        if (string.IsNullOrWhiteSpace(name)) return "is empty";
        if (name.Length > LongestName) return FormattableString.Invariant($"has {name.Length} characters, more than {LongestName}");
        if (name.Any(char.IsControl)) return "contains a control character, such as a tab or a line break";
        return HasHalfCharacter(name) ? "contains half a character" : null;
    }

    public static bool AreSame(string one, string two) => string.Equals(one, two, StringComparison.OrdinalIgnoreCase);

    /// <summary>
    /// Finds names that layers of one group would share, upper and lower case being the same.
    /// Names that are shared already and that nothing touches are left out.
    /// </summary>
    /// <param name="newNames">The layers that get a name, with that name.</param>
    /// <returns>For each shared name: the layers that would have it, front to back.</returns>
    public static IEnumerable<(string Name, IReadOnlyList<Layer> Layers)> FindDuplicates(IReadOnlyDictionary<Layer, string> newNames)
    {
        string NameOf(Layer layer) => newNames.TryGetValue(layer, out var name) ? name : layer.Name;

        foreach (var group in newNames.Keys.Select(layer => layer.Parent!).Distinct())
        {
            foreach (var shared in group.GetChildren().GroupBy(NameOf, StringComparer.OrdinalIgnoreCase))
            {
                var layers = shared.ToList();
                if (layers.Count > 1 && layers.Any(newNames.ContainsKey)) yield return (NameOf(layers.First(newNames.ContainsKey)), layers);
            }
        }
    }

    private static bool HasHalfCharacter(string name)
    {
        for (var i = 0; i < name.Length; i++)
        {
            if (!char.IsSurrogate(name[i])) continue;
            if (i + 1 == name.Length || !char.IsSurrogatePair(name[i], name[i + 1])) return true;
            i++;
        }

        return false;
    }
}
