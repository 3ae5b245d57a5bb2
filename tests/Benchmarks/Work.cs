using LayerTools.Checks;
using LayerTools.Deliveries;
using LayerTools.Edits;
using LayerTools.Formats;
using LayerTools.Images;
using LayerTools.Measures.Survey;
using LayerTools.Measures.Symmetry;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;
using LayerTools.Profiles;
using LayerTools.Sheets;

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

    /// <summary>Reads the channels of all visible layers and draws them together, as RGBA in memory.</summary>
    public static Raster Composite(LayerFile file)
    {
        using var reader = new PixelReader(file);
        return new Compositor(file, reader).RenderWhole();
    }

    /// <summary>Reads every part and writes it as PNG, with its list; returns the bytes of the pictures.</summary>
    public static long WriteImages(LayerFile file, string folder)
    {
        var result = LayerImages.Write(file, [.. file.GetLayers()], folder, new ImageOptions { Force = true });
        return result.Paths.Take(result.PictureCount).Sum(path => new FileInfo(path).Length);
    }

    /// <summary>Compares the figure and all its parts with their reflections.</summary>
    public static IReadOnlyList<LayerSymmetry> MeasureSymmetry(LayerFile file) => new SymmetryReader().Read(file);

    /// <summary>Unpacks the alpha of every part once and finds out what rules and measures ask about it.</summary>
    public static FigureSurvey Survey(LayerFile file) => FigureSurvey.Take(file);

    /// <summary>Reads a figure and asks it all questions of the profile that holds where none is given.</summary>
    public static IReadOnlyList<Finding> Check(string path) => LayerFileChecker.Check(LayerFiles.Read(path), LayerProfiles.Default);

    /// <summary>Tells what changed between two files, readings included.</summary>
    public static DeliveryComparison Compare(string old, string @new) => DeliveryComparer.Compare(LayerFiles.Read(old), LayerFiles.Read(@new));

    /// <summary>Saves a file with a stripe of other red across each of its largest parts.</summary>
    public static void RepaintAndSave(string path, string destination, int parts)
    {
        var file = LayerFiles.Read(path);
        using var spool = new SpoolFile();
        using (var reader = new PixelReader(file))
        {
            foreach (var layer in file.GetLayers().Where(layer => !layer.IsGroup).OrderByDescending(layer => layer.Bounds.Area).Take(parts).ToList())
            {
                var samples = reader.ReadPlane(layer, PlaneRole.Color0)!;
                var middle = layer.Bounds.Height / 2 * layer.Bounds.Width;
                for (var i = middle; i < Math.Min(samples.Length, middle + (40 * layer.Bounds.Width)); i++) samples[i] ^= 0x40;
                layer.Planes[layer.Planes.FindIndex(plane => plane.Role == PlaneRole.Color0)] =
                    PlanePacker.Pack(PlaneRole.Color0, Compression.PackBits, layer.Bounds.Width, layer.Bounds.Height, file.BitDepth, file.Format, samples, spool);
            }
        }

        LayerFiles.Save(file, destination, overwrite);
    }

    /// <summary>Writes a sheet of all parts, as large as it is where nobody says anything, and throws it away; returns its bytes.</summary>
    public static long WriteSheet(LayerFile file, string name)
    {
        var folder = Directory.CreateTempSubdirectory("layertools-bench-").FullName;
        try
        {
            return SheetWriter.Write(file, [.. file.GetLayers()], Path.Combine(folder, name), new SheetOptions()).Paths.Sum(path => new FileInfo(path).Length);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
