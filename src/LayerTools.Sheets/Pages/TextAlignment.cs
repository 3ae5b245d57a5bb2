namespace LayerTools.Sheets.Pages;

/// <summary>Where a line of text stands in its area.</summary>
internal enum TextAlignment
{
    Start,
    Middle,
    End,
}
