using LayerTools.Model;

namespace LayerTools.Sheets.Pages;

/// <summary>A small rounded patch of colour with an edge; only the edge where there is no colour.</summary>
internal sealed record ChipElement(Bounds Area, Rgb? Fill, Rgb Edge) : PageElement(Area);
