using LayerTools.Model;

namespace LayerTools.Sheets.Pages;

/// <summary>A small shape with an edge, filled with a mark's colour; empty where there is none.</summary>
internal sealed record ChipElement(Bounds Area, StateShape Shape, Rgb? Fill, Rgb Edge) : PageElement(Area);
