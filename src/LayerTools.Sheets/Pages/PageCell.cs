using LayerTools.Pixels;
using LayerTools.Sheets.Parts;

namespace LayerTools.Sheets.Pages;

/// <summary>What a cell is about and what became of drawing it.</summary>
/// <param name="Subject">What it is about.</param>
/// <param name="Fit">Its size on the page; null if it is empty.</param>
/// <param name="Picture">Its picture; null if it is empty, shows nothing, cannot be read or is not shown alone.</param>
/// <param name="Problem">Why it cannot be drawn, as a sentence; null if it can.</param>
/// <param name="Placed">The part in the faded figure; null if it is not shown so.</param>
/// <param name="PlacedFit">How large the canvas is there.</param>
internal sealed record PageCell(SheetSubject Subject, PartFit? Fit, Raster? Picture, string? Problem, Raster? Placed = null, PartFit? PlacedFit = null)
{
    /// <summary>Whether there is something to see.</summary>
    public bool IsDrawn => Picture is not null || Placed is not null;
}
