using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Sheets.Parts;
using LayerTools.Sheets.Rendering;

namespace LayerTools.Sheets;

/// <summary>Writes contact sheets: every part of a file in a cell of its own, whole and undistorted, with its name, path, size and mark in words.</summary>
public static class SheetWriter
{
    /// <summary>
    /// Writes a sheet. Its format is that of the path's extension: .png, .jpg and .webp are pictures, where further pages stand beside the first
    /// (sheet.png, sheet-2.png, sheet-3.png); .pdf and .html hold all pages. Either all is written or nothing.
    /// </summary>
    /// <param name="file">The file the layers belong to. Pending edits are shown.</param>
    /// <param name="layers">The layers to show, in this order. Of parts, those that carry no pixels (groups, adjustments) get no cell; of groups, those that are none.</param>
    /// <param name="path">Where the first page goes. Missing folders are made.</param>
    /// <param name="options">How the sheet looks.</param>
    /// <param name="cancellation">Stops; then nothing is written.</param>
    /// <returns>The files written. A part whose pixels cannot be read is a cell that says so, and a warning.</returns>
    /// <exception cref="SheetException">An option is out of range, a file exists, or the libraries that draw are missing.</exception>
    /// <exception cref="LayeredFileException">A file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static SheetResult Write(LayerFile file, IReadOnlyList<Layer> layers, string path, SheetOptions options, CancellationToken cancellation = default)
    {
        if (file is null) throw new ArgumentNullException(nameof(file));
        if (layers is null) throw new ArgumentNullException(nameof(layers));
        if (layers.Any(layer => layer.GetFile() != file)) throw new ArgumentException("A layer belongs to another file.", nameof(layers));
        return Run(path, options, fullPath => new SheetJob(SheetPlan.OfLayers(file, layers, options), fullPath, options, new LayerPictures(file)), cancellation);
    }

    /// <summary>Writes a sheet of files, each drawn whole as one cell; else as <see cref="Write"/>.</summary>
    /// <param name="files">The files, in this order.</param>
    /// <param name="path">Where the first page goes.</param>
    /// <param name="options">How the sheet looks. Files are always shown alone.</param>
    /// <param name="cancellation">Stops; then nothing is written.</param>
    public static SheetResult WriteOverview(IReadOnlyList<LayerFile> files, string path, SheetOptions options, CancellationToken cancellation = default)
    {
        if (files is null) throw new ArgumentNullException(nameof(files));
        if (options is null) throw new ArgumentNullException(nameof(options));
        var ofFiles = options with { Content = SheetContent.File, View = SheetView.Alone };
        return Run(path, ofFiles, fullPath => new SheetJob(SheetPlan.OfFiles(files, ofFiles), fullPath, ofFiles, new FilePictures()), cancellation);
    }

    private static SheetResult Run(string path, SheetOptions options, Func<string, SheetJob> create, CancellationToken cancellation)
    {
        if (path is null) throw new ArgumentNullException(nameof(path));
        if (options is null) throw new ArgumentNullException(nameof(options));
        var fullPath = Path.GetFullPath(path);
        options.Validate(fullPath);
        return NativeLibraries.Guard(fullPath, () =>
        {
            using var job = create(fullPath);
            return job.Run(cancellation);
        });
    }
}
