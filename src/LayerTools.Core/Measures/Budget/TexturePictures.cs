using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Images;
using LayerTools.Pixels;

namespace LayerTools.Measures.Budget;

/// <summary>Writes a picture of each page of textures, see <see cref="PagePainter"/>.</summary>
public static class TexturePictures
{
    /// <summary>Writes PNG pictures of at most 2048 px a side: either all or none.</summary>
    /// <param name="pages">The pages.</param>
    /// <param name="path">The PNG of the first page; those of further ones have -2, -3 ... before the extension.</param>
    /// <param name="force">Whether files that exist are overwritten.</param>
    /// <param name="cancellation">Stops; then nothing is written.</param>
    /// <returns>The files, full paths.</returns>
    /// <exception cref="LayeredFileException">A file exists or cannot be written, or a layer cannot be read.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static IReadOnlyList<string> Write(TexturePages pages, string path, bool force, CancellationToken cancellation = default)
    {
        if (pages.Count == 0)
        {
            throw new LayeredFileException(LayeredFileErrorKind.NotSupported, pages.File.Path, "layers", -1, "There is no part to put on a page.", "Look at the layers with Get-LayerStatus.");
        }

        using var target = new ImageFolder(Enumerable.Range(1, pages.Count).Select(page => PathOf(Path.GetFullPath(path), page)), force);
        using var reader = new PixelReader(pages.File);
        using var source = new PictureFile(pages.File, ReadLimits.Default);
        var painter = new PagePainter(pages, reader, cancellation);
        for (var page = 0; page < pages.Count; page++)
        {
            var picture = painter.Paint(page);
            target.Write(page, stream => source.Write(picture, stream, cancellation));
        }

        cancellation.ThrowIfCancellationRequested();
        return target.Commit();
    }

    private static string PathOf(string path, int page) => page == 1
        ? path
        : Path.Combine(Path.GetDirectoryName(path)!, FormattableString.Invariant($"{Path.GetFileNameWithoutExtension(path)}-{page}{Path.GetExtension(path)}"));
}
