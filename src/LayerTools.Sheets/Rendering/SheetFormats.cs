namespace LayerTools.Sheets.Rendering;

/// <summary>Knows kinds of files by their extensions.</summary>
internal static class SheetFormats
{
    /// <exception cref="SheetException">The extension is none that a sheet can have.</exception>
    public static SheetFormat Find(string path) => Path.GetExtension(path).ToLowerInvariant() switch
    {
        ".png" => SheetFormat.Png,
        ".jpg" or ".jpeg" => SheetFormat.Jpeg,
        ".webp" => SheetFormat.Webp,
        ".pdf" => SheetFormat.Pdf,
        ".html" or ".htm" => SheetFormat.Html,
        _ => throw SheetException.Refuse(path, "This is no kind of file that a sheet can be.", "Let the path end in .png, .jpg, .webp, .pdf or .html."),
    };

    /// <summary>Whether all pages are one file.</summary>
    public static bool IsOneFile(SheetFormat format) => format is SheetFormat.Pdf or SheetFormat.Html;
}
