using LayerTools.Edits;
using LayerTools.Formats;
using LayerTools.Model;

namespace LayerTools.Benchmarks;

/// <summary>The pieces of the main job that are measured, each as users get it.</summary>
internal static class Work
{
    private static readonly SaveOptions overwrite = new() { Force = true };

    public static LayerFile ReadTree(string path) => LayerFiles.Read(path);

    /// <summary>Reads, renames every layer and group, and saves to another file on the same disk.</summary>
    public static void RenameAllAndSave(string path, string destination)
    {
        var file = LayerFiles.Read(path);
        RenameEdit.ByFunction((layer, number) => $"{layer.Name} {number}").Plan(file, [.. file.GetLayers()]).Apply();
        LayerFiles.Save(file, destination, overwrite);
    }

    /// <summary>What any program that writes the file has to do at least: its bytes once, and on the disk for certain.</summary>
    public static void CopyWithFlush(string path, string destination)
    {
        using var source = File.OpenRead(path);
        using var target = File.Create(destination);
        source.CopyTo(target, 1 << 20);
        target.Flush(flushToDisk: true);
    }

    /// <summary>Decodes, flips and encodes every part that is on the left only; returns the new layers.</summary>
    public static IReadOnlyList<Layer> Mirror(LayerFile file)
    {
        var plan = new MirrorEdit().Plan(file, [.. file.GetLayers()]);
        plan.Apply();
        return plan.Results ?? [];
    }
}
