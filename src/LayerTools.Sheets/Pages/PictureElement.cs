using LayerTools.Model;
using LayerTools.Pixels;

namespace LayerTools.Sheets.Pages;

/// <summary>A picture at its own size; the area is as large as the picture.</summary>
internal sealed record PictureElement(Bounds Area, Raster Picture) : PageElement(Area);
