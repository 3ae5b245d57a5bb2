using LayerTools.Errors;

namespace LayerTools.Sheets.Rendering;

/// <summary>Where the pages of a sheet go.</summary>
internal static class PagePaths
{
    /// <exception cref="SheetException">The extension is none that a sheet can have.</exception>
    public static IReadOnlyList<string> List(string path, int pageCount)
    {
        if (SheetFormats.IsOneFile(SheetFormats.Find(path))) return [path];
        return Enumerable.Range(1, pageCount).Select(page => ForPage(path, page)).ToList();
    }

    /// <exception cref="SheetException">A file is there and must not be overwritten.</exception>
    public static void EnsureFree(IReadOnlyList<string> paths, bool overwrite)
    {
        foreach (var path in paths)
        {
            if (Directory.Exists(path)) throw new SheetException(LayeredFileErrorKind.Unavailable, path, "This is a folder.", "Name a file in it.");
            if (!overwrite && File.Exists(path)) throw new SheetException(LayeredFileErrorKind.Unavailable, path, "The file exists.", "Use -Force to overwrite it, or another path.");
        }
    }

    /// <summary>The page that an earlier, longer sheet left behind; null if there is none.</summary>
    public static string? FindLeftover(string path, int pageCount)
    {
        if (SheetFormats.IsOneFile(SheetFormats.Find(path))) return null;
        var next = ForPage(path, pageCount + 1);
        return File.Exists(next) ? next : null;
    }

    private static string ForPage(string path, int page) => page == 1
        ? path
        : Path.Combine(Path.GetDirectoryName(path)!, FormattableString.Invariant($"{Path.GetFileNameWithoutExtension(path)}-{page}{Path.GetExtension(path)}"));
}
