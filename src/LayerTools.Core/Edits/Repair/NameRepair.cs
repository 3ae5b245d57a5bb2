using LayerTools.Checks;
using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Edits.Repair;

/// <summary>Gives layers the names that they were meant to have, as long as no two layers of a group come to share one.</summary>
internal static class NameRepair
{
    /// <summary>Writes names as the profile says; none of them comes to be shared (see <see cref="NormalizeEdit"/>).</summary>
    public static void Write(RepairWork work, IReadOnlyList<Finding> findings)
    {
        foreach (var finding in findings) work.Rename(work.LayerOf(finding), finding.Limit!);
    }

    /// <summary>Takes away what nobody sees at the ends of names.</summary>
    public static void Trim(RepairWork work, IReadOnlyList<Finding> findings)
    {
        // One that gets a new name already has nothing at its ends any more.
        foreach (var layer in findings.Select(work.LayerOf).Where(layer => work.NameOf(layer) == layer.Name)) Rename(work, layer, TrimmedName.Of(layer.Name));
    }

    private static void Rename(RepairWork work, Layer layer, string name)
    {
        if (layer.Parent!.GetChildren().Any(other => other != layer && NameRules.AreSame(work.NameOf(other), name)))
        {
            work.Leave($"'{layer.LayerPath}' keeps its name, since another layer of its group is called '{name}'.");
            return;
        }

        work.Rename(layer, name);
    }
}
