namespace LayerTools.Sheets.Rendering;

/// <summary>The kinds of files a sheet can be.</summary>
internal enum SheetFormat
{
    Png,
    Jpeg,
    Webp,
    Pdf,
    Html,
}
