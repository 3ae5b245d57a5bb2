using LayerTools.Errors;
using LayerTools.Formats.Psd;
using LayerTools.Model;
using LayerTools.Pixels.Compositing;

namespace LayerTools.Images;

/// <summary>Writes pictures of layers and of whole files as PNG: RGBA, 8 bits a sample, whatever the file's depth and colours.</summary>
public static class LayerImages
{
    /// <summary>
    /// Writes one picture for each part, and a manifest that says where each belongs: layers.json with its schema, and layers.csv. A picture has the layer's
    /// own pixels, cut by its masks, but not its opacity, blend mode, clipping or effects. Either all files are written or none.
    /// </summary>
    /// <param name="file">The file. Pending edits are seen.</param>
    /// <param name="layers">The layers to write; groups and adjustments only stand in the manifest.</param>
    /// <param name="folder">Where the files go; made if missing.</param>
    /// <param name="options">How they are written.</param>
    /// <param name="cancellation">Stops; then nothing is written.</param>
    /// <exception cref="LayeredFileException">A file exists or cannot be written, or a layer cannot be read or is larger than a limit.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static ImageResult Write(LayerFile file, IReadOnlyCollection<Layer> layers, string folder, ImageOptions options, CancellationToken cancellation = default)
    {
        EnsureLayers(file);
        return new ImageJob(file, layers, Path.GetFullPath(folder), options).Run(cancellation);
    }

    /// <summary>Writes the whole figure as its visible layers make it, as large as the canvas. What cannot be drawn is warned about.</summary>
    /// <param name="file">The file. Pending edits are seen.</param>
    /// <param name="path">The PNG to write.</param>
    /// <param name="options">How it is written.</param>
    /// <param name="cancellation">Stops; then nothing is written.</param>
    /// <exception cref="LayeredFileException">The file exists or cannot be written, or the layers cannot be drawn at all.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static ImageResult WriteMerged(LayerFile file, string path, ImageOptions options, CancellationToken cancellation = default)
    {
        EnsureLayers(file);
        var canvas = new Bounds(0, 0, file.Width, file.Height);
        var drawing = new CompositeOptions { Threads = options.Parallelism, Cancellation = cancellation };
        var notDrawn = CompositorSupport.FindNotDrawn(file);
        var warnings = notDrawn.Select(reason => $"Not drawn: {reason}").Concat(CompositorSupport.FindNotes(file)).ToList();
        return WriteOne(file, path, options, warnings, (source, stream) => source.Draw(drawing, canvas, "layers", stream), cancellation) with { NotDrawn = notDrawn };
    }

    /// <summary>Writes the merged picture that the file holds, as large as the canvas was when it was saved.</summary>
    /// <param name="file">The file. Pending edits are not seen, and a warning says so.</param>
    /// <param name="path">The PNG to write.</param>
    /// <param name="options">How it is written.</param>
    /// <param name="cancellation">Stops; then nothing is written.</param>
    /// <exception cref="LayeredFileException">The file exists or cannot be written, or the stored picture cannot be read.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static ImageResult WriteStored(LayerFile file, string path, ImageOptions options, CancellationToken cancellation = default)
    {
        var detail = (PsdFileDetail)file.Detail;
        if (detail.MergedPicture.Length == 0) throw Refuse(file, "merged picture", "The file was never saved, so it stores no merged picture.", "Save it first, or use -Merged.");
        List<string> warnings = [];
        if (file.IsPictureStale || detail.HasMovedCanvas(file)) warnings.Add("The stored picture does not show the edits that are pending; -Merged does.");
        if (!detail.HasRealPicture) warnings.Add("The file says that the picture it stores is not what its layers look like; -Merged draws that.");
        return WriteOne(file, path, options, warnings, (source, stream) => source.Write(StoredRaster.Read(file), stream, cancellation), cancellation);
    }

    private static void EnsureLayers(LayerFile file)
    {
        if (file.LayerCount == 0) throw Refuse(file, "layers", "The file has no layers to draw.", "The picture that it stores is written with -Stored.");
        CompositorSupport.EnsureColors(file);
    }

    private static ImageResult WriteOne(LayerFile file, string path, ImageOptions options, IReadOnlyList<string> warnings, Action<PictureFile, Stream> draw, CancellationToken cancellation)
    {
        using var target = new ImageFolder([Path.GetFullPath(path)], options.Force);
        using var source = new PictureFile(file, options.Limits);
        target.Write(0, stream => draw(source, stream));
        cancellation.ThrowIfCancellationRequested();
        options.Progress?.Invoke(1, 1);
        return new ImageResult(target.Commit(), 1, [.. warnings, .. ImageNotes.FindProfileNotes(file)]);
    }

    private static LayeredFileException Refuse(LayerFile file, string section, string problem, string remedy) => new(LayeredFileErrorKind.NotSupported, file.Path, section, -1, problem, remedy);
}
