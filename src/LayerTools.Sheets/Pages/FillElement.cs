using LayerTools.Model;

namespace LayerTools.Sheets.Pages;

/// <summary>A rectangle of one colour.</summary>
internal sealed record FillElement(Bounds Area, Rgb Color) : PageElement(Area);
