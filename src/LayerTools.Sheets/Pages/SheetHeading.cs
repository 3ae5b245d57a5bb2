namespace LayerTools.Sheets.Pages;

/// <summary>The title block of a sheet.</summary>
/// <param name="Title">The large line.</param>
/// <param name="Facts">Date, canvas and counts.</param>
/// <param name="Notes">What scale and view mean.</param>
internal sealed record SheetHeading(string Title, string Facts, string Notes);
