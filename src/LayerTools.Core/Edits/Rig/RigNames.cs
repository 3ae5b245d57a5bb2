using System.Globalization;
using LayerTools.Model;

namespace LayerTools.Edits.Rig;

/// <summary>Gives every part a name of its own, and every group; the front-most keeps the shared one. Upper and lower case are the same.</summary>
internal static class RigNames
{
    public static void MakeUnique(LayerFile file)
    {
        MakeUnique(file.GetLayers().Where(layer => !layer.IsGroup).ToList());
        MakeUnique(file.GetLayers().Where(layer => layer.IsGroup).ToList());
    }

    private static void MakeUnique(IReadOnlyList<Layer> layers)
    {
        var all = new HashSet<string>(layers.Select(layer => layer.Name), StringComparer.OrdinalIgnoreCase);
        var taken = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var layer in layers)
        {
            if (taken.Add(layer.Name)) continue;
            for (var number = 2; ; number++)
            {
                var name = Number(layer.Name, number);
                if (all.Contains(name) || !taken.Add(name)) continue;
                layer.Name = name;
                break;
            }
        }
    }

    /// <summary>The number goes to the end, unless the name's side would be lost there; it then goes before the name's side token.</summary>
    private static string Number(string name, int number)
    {
        var ending = " " + number.ToString(CultureInfo.InvariantCulture);
        var room = NameRules.LongestName - ending.Length;
        var stem = name.Length <= room ? name : name.Substring(0, char.IsHighSurrogate(name[room - 1]) ? room - 1 : room);
        return string.IsNullOrWhiteSpace(stem) ? "Part" + ending : stem + ending;
    }
}
