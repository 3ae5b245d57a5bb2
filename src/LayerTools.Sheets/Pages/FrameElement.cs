using LayerTools.Model;

namespace LayerTools.Sheets.Pages;

/// <summary>A line of 1 px just inside the edge of a rectangle.</summary>
internal sealed record FrameElement(Bounds Area, Rgb Color) : PageElement(Area);
