namespace LayerTools.Sheets.Pages;

/// <summary>One page as a list of what stands on it, back to front. Knows nothing of how it will be drawn.</summary>
/// <param name="Width">Columns, px at 100 %.</param>
/// <param name="Height">Rows, px at 100 %.</param>
/// <param name="Paper">The colour all around.</param>
/// <param name="Elements">What stands on the page.</param>
internal sealed record SheetPage(int Width, int Height, Rgb Paper, IReadOnlyList<PageElement> Elements);
