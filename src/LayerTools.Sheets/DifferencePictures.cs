using LayerTools.Deliveries;
using LayerTools.Errors;
using LayerTools.Images;
using LayerTools.Model;
using LayerTools.Sheets.Deliveries;
using LayerTools.Sheets.Rendering;
using LayerTools.Sheets.Text;

namespace LayerTools.Sheets;

/// <summary>Writes pictures of what was repainted between two deliveries: before, after, and where both differ.</summary>
public static class DifferencePictures
{
    /// <summary>The paths that <see cref="Write"/> would write, front to back.</summary>
    /// <param name="new">The delivery of now.</param>
    /// <param name="differences">What changed. Only what was repainted, and whose pixels could be compared, has a picture.</param>
    /// <param name="folder">Where the pictures go; they are called like their layers.</param>
    public static IReadOnlyList<string> List(LayerFile @new, IReadOnlyList<LayerDifference> differences, string folder)
    {
        if (@new is null) throw new ArgumentNullException(nameof(@new));
        var names = ImageNames.Choose([.. @new.GetLayers().Where(layer => !layer.IsGroup)]).ToDictionary(pair => pair.Key.LayerNumber, pair => pair.Value);
        return [.. FindRepainted(differences).Select(difference => Path.Combine(Path.GetFullPath(folder), names[difference.LayerNumber!.Value]))];
    }

    /// <summary>Writes one PNG for each layer that was repainted. Large layers are shown smaller, and the picture says how much. Either all files are written or none.</summary>
    /// <param name="old">The delivery before.</param>
    /// <param name="new">The delivery of now.</param>
    /// <param name="differences">What changed between them.</param>
    /// <param name="folder">Where the pictures go; made if missing.</param>
    /// <param name="overwrite">Whether files there are replaced.</param>
    /// <param name="cancellation">Stops; then nothing is written.</param>
    /// <returns>The files written, front to back.</returns>
    /// <exception cref="SheetException">A file exists, or the libraries that draw are missing.</exception>
    /// <exception cref="LayeredFileException">A layer cannot be read, or a file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static IReadOnlyList<string> Write(LayerFile old, LayerFile @new, IReadOnlyList<LayerDifference> differences, string folder, bool overwrite = false, CancellationToken cancellation = default)
    {
        if (old is null) throw new ArgumentNullException(nameof(old));
        var paths = List(@new, differences, folder);
        if (paths.Count == 0) return [];
        PagePaths.EnsureFree(paths, overwrite);
        return NativeLibraries.Guard(paths[0], () => WriteAll(old, @new, [.. FindRepainted(differences)], paths, overwrite, cancellation));
    }

    private static IOrderedEnumerable<LayerDifference> FindRepainted(IReadOnlyList<LayerDifference> differences) =>
        differences.Where(difference => difference.ChangedBox is { IsEmpty: false } && difference.LayerNumber is not null).OrderBy(difference => difference.LayerNumber);

    private static IReadOnlyList<string> WriteAll(LayerFile old, LayerFile @new, IReadOnlyList<LayerDifference> differences, IReadOnlyList<string> paths, bool overwrite, CancellationToken cancellation)
    {
        var (olds, news) = (old.GetLayers().ToDictionary(layer => layer.LayerNumber), @new.GetLayers().ToDictionary(layer => layer.LayerNumber));
        using var oldReader = new ContentReader(old, cancellation);
        using var newReader = new ContentReader(@new, cancellation);
        using var fonts = new FontLibrary(FontFolders.ListFiles);
        using var shaper = new TextShaper(fonts);
        using var sink = new PicturePages(paths, overwrite, new PagePainter(shaper));
        foreach (var difference in differences)
        {
            cancellation.ThrowIfCancellationRequested();
            var map = DifferenceMap.Read(
                oldReader,
                olds[difference.OldLayerNumber!.Value],
                newReader,
                news[difference.LayerNumber!.Value],
                difference.MovedRight ?? 0,
                difference.MovedDown ?? 0,
                DifferencePage.LargestSide,
                cancellation);
            sink.Add(DifferencePage.Compose(difference, map, shaper));
        }

        cancellation.ThrowIfCancellationRequested();
        return sink.Commit();
    }
}
