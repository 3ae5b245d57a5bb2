using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Sheets.Parts;
using LayerTools.Sheets.Rendering;

namespace LayerTools.Sheets;

/// <summary>Writes contact sheets: every part of a file in a cell of its own, whole and undistorted, with its name, path, size and mark in words.</summary>
public static class SheetWriter
{
    /// <summary>
    /// Writes a sheet as PNG. Further pages stand beside the first: sheet.png, sheet-2.png, sheet-3.png. Either all pages are written or none.
    /// </summary>
    /// <param name="file">The file the layers belong to. Pending edits are shown.</param>
    /// <param name="layers">The layers to show, in this order; those that carry no pixels (groups, adjustments) get no cell.</param>
    /// <param name="path">Where the first page goes; ends in .png. Missing folders are made.</param>
    /// <param name="options">How the sheet looks.</param>
    /// <param name="cancellation">Stops; then nothing is written.</param>
    /// <returns>The files written. A part whose pixels cannot be read is a cell that says so, and a warning.</returns>
    /// <exception cref="SheetException">An option is out of range, a file exists, or the libraries that draw are missing.</exception>
    /// <exception cref="LayeredFileException">A file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static SheetResult Write(LayerFile file, IReadOnlyList<Layer> layers, string path, SheetOptions options, CancellationToken cancellation = default)
    {
        if (file is null) throw new ArgumentNullException(nameof(file));
        using var pictures = new LayerPictures(file);
        return Write(file, layers, path, options, pictures, cancellation);
    }

    internal static SheetResult Write(LayerFile file, IReadOnlyList<Layer> layers, string path, SheetOptions options, IPartPictures pictures, CancellationToken cancellation)
    {
        if (layers is null) throw new ArgumentNullException(nameof(layers));
        if (path is null) throw new ArgumentNullException(nameof(path));
        if (options is null) throw new ArgumentNullException(nameof(options));
        if (layers.Any(layer => layer.GetFile() != file)) throw new ArgumentException("A layer belongs to another file.", nameof(layers));
        var fullPath = Path.GetFullPath(path);
        options.Validate(fullPath);
        return NativeLibraries.Guard(fullPath, () => new SheetJob(file, layers, fullPath, options, pictures).Run(cancellation));
    }
}
