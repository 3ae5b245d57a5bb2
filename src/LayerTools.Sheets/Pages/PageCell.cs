using LayerTools.Model;
using LayerTools.Pixels;

namespace LayerTools.Sheets.Pages;

/// <summary>A part and what became of drawing it.</summary>
/// <param name="Part">The layer.</param>
/// <param name="Fit">Its size on the page; null if it is empty.</param>
/// <param name="Picture">Its picture; null if it is empty, shows nothing or cannot be read.</param>
/// <param name="Problem">Why it cannot be read, as a sentence; null if it can.</param>
internal sealed record PageCell(Layer Part, PartFit? Fit, Raster? Picture, string? Problem);
