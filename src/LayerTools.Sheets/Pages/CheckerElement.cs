using LayerTools.Model;

namespace LayerTools.Sheets.Pages;

/// <summary>A board of two colours whose squares are <paramref name="Square"/> px wide.</summary>
internal sealed record CheckerElement(Bounds Area, Rgb First, Rgb Second, int Square) : PageElement(Area);
