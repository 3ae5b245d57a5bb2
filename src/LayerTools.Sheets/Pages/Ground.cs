using LayerTools.Model;

namespace LayerTools.Sheets.Pages;

/// <summary>What pictures of a tile stand on.</summary>
/// <param name="Area">The tile, page px.</param>
/// <param name="Pattern">How the colours are laid out.</param>
/// <param name="First">The plain colour, that of the first square, or the left half's.</param>
/// <param name="Second">The other colour.</param>
internal sealed record Ground(Bounds Area, GroundPattern Pattern, Rgb First, Rgb Second)
{
    /// <summary>The tile as it is drawn, back to front.</summary>
    public IEnumerable<PageElement> Elements => Pattern switch
    {
        GroundPattern.Checker => [new CheckerElement(Area, First, Second, SheetMetrics.CheckerSquare)],
        GroundPattern.Halves => [new FillElement(Area, First), new FillElement(Area with { Left = Area.Left + (Area.Width / 2) }, Second)],
        _ => [new FillElement(Area, First)],
    };
}
