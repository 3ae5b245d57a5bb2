using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Images;

/// <summary>
/// Gives each part's picture a file name of its own: the layer's name; where several have it, with the names of the groups around it in front; and where even
/// these are the same, with a number. All parts of the file are named, so that a part's name does not depend on which others are written.
/// </summary>
internal static class ImageNames
{
    private const string Extension = ".png";

    /// <summary>The file names of parts, front to back.</summary>
    public static IReadOnlyDictionary<Layer, string> Choose(IReadOnlyList<Layer> parts)
    {
        var names = parts.ToDictionary(part => part, part => FileNames.MakeSafe(part.Name));
        var open = FindClashing(parts, names);
        for (var depth = 1; open.Count > 0; depth++)
        {
            var longer = open.Where(part => part.Depth >= depth).ToList();
            if (longer.Count == 0) break;
            foreach (var part in longer) names[part] = FileNames.MakeSafe(JoinPath(part, depth));
            open = FindClashing(parts, names);
        }

        Number(open, names);
        return names.ToDictionary(pair => pair.Key, pair => pair.Value + Extension);
    }

    private static List<Layer> FindClashing(IReadOnlyList<Layer> parts, Dictionary<Layer, string> names) =>
        parts.GroupBy(part => FileNames.ToKey(names[part])).Where(group => group.Count() > 1).SelectMany(group => group).ToList();

    /// <summary>The first keeps its name; the others get the least number that makes a new one.</summary>
    private static void Number(List<Layer> clashing, Dictionary<Layer, string> names)
    {
        var taken = new HashSet<string>(names.Values.Select(FileNames.ToKey));
        var first = new HashSet<string>();
        foreach (var part in clashing)
        {
            var name = names[part];
            if (first.Add(FileNames.ToKey(name))) continue;
            for (var number = 2; !taken.Add(FileNames.ToKey(names[part])); number++) names[part] = FormattableString.Invariant($"{name} {number}");
        }
    }

    private static string JoinPath(Layer part, int depth)
    {
        var text = part.Name;
        for (var group = part.GetParent(); group is not null && depth > 0; group = group.GetParent(), depth--) text = $"{group.Name} - {text}";
        return text;
    }
}
