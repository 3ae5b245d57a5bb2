using LayerTools.Model;
using LayerTools.Pixels;

namespace LayerTools.Sheets.Pages;

/// <summary>A picture in the middle of its area.</summary>
/// <param name="Area">Where it stands, as large as the picture, or less than 1 px larger where that is no whole number of page px.</param>
/// <param name="Picture">The picture.</param>
/// <param name="Density">Pixels of the picture in one page px.</param>
/// <param name="Zoom">How many times it is enlarged, with hard pixels.</param>
/// <param name="Ground">What it stands on, for pages that hold no transparency; null if it is opaque.</param>
internal sealed record PictureElement(Bounds Area, Raster Picture, int Density = 1, int Zoom = 1, Ground? Ground = null) : PageElement(Area);
