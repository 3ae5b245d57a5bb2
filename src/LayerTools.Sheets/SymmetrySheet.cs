using LayerTools.Errors;
using LayerTools.Measures.Symmetry;
using LayerTools.Model;
using LayerTools.Pixels.Compositing;
using LayerTools.Sheets.Rendering;
using LayerTools.Sheets.Symmetry;
using LayerTools.Sheets.Text;

namespace LayerTools.Sheets;

/// <summary>Writes a picture of where the halves of a figure differ: the figure faded, differences of coverage hatched and of colour plain, both axes, and a legend.</summary>
public static class SymmetrySheet
{
    /// <summary>Most columns and rows of the figure on the page, px.</summary>
    public const int LargestSide = 1000;

    /// <summary>Smaller figures are shown enlarged by a whole number.</summary>
    private const int SmallestSide = 500;

    /// <summary>Writes the picture as PNG. The figure is all visible parts; backdrops, sketches and guides are left out. Large canvases are shown smaller, and the page says how much.</summary>
    /// <param name="file">The file. Pending edits are shown.</param>
    /// <param name="path">Where the picture goes; ends in .png. Missing folders are made.</param>
    /// <param name="overwrite">Whether a file there is replaced.</param>
    /// <param name="cancellation">Stops; then nothing is written.</param>
    /// <exception cref="SheetException">The file exists, or the libraries that draw are missing.</exception>
    /// <exception cref="LayeredFileException">The layers cannot be read or drawn, or the file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static SheetResult Write(LayerFile file, string path, bool overwrite = false, CancellationToken cancellation = default)
    {
        if (file is null) throw new ArgumentNullException(nameof(file));
        if (path is null) throw new ArgumentNullException(nameof(path));
        if (SheetFormats.Find(path) != SheetFormat.Png) throw SheetException.Refuse(path, "This picture is written as PNG.", "Let the path end in .png.");
        var paths = PagePaths.List(Path.GetFullPath(path), 1);
        PagePaths.EnsureFree(paths, overwrite);
        return NativeLibraries.Guard(paths[0], () => Write(file, paths, overwrite, cancellation));
    }

    private static SheetResult Write(LayerFile file, IReadOnlyList<string> paths, bool overwrite, CancellationToken cancellation)
    {
        var figures = new SymmetryReader().ReadFigure(file, cancellation);
        using var painter = new PartPainter(file, Formats.ReadLimits.Default, cancellation);
        var small = painter.DrawSmallFigure(new PartRoles(file).IsShown, LargestSide, LargestSide);
        using var fonts = new FontLibrary(FontFolders.ListFiles);
        using var shaper = new TextShaper(fonts);
        using var sink = new PicturePages(paths, overwrite, new PagePainter(shaper));
        sink.Add(SymmetryPage.Compose(file, figures, small, Math.Max(1, SmallestSide / Math.Max(small.Width, small.Height)), shaper));
        cancellation.ThrowIfCancellationRequested();
        return new SheetResult(sink.Commit(), 1, 1, [.. CompositorSupport.FindNotDrawn(file).Select(reason => $"Not drawn: {reason}")]);
    }
}
