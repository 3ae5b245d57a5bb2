using LayerTools.Model;

namespace LayerTools.Sheets.Parts;

/// <summary>Chooses the layers that get a cell.</summary>
public static class SheetParts
{
    /// <summary>
    /// The parts among layers, each once, in their order: layers that carry pixels of their own, also hidden and empty ones.
    /// Groups, adjustments, and fills without a rectangle carry none.
    /// </summary>
    public static IReadOnlyList<Layer> Select(IEnumerable<Layer> layers) => layers.Where(CarriesPixels).Distinct().ToList();

    private static bool CarriesPixels(Layer layer) => layer.Kind switch
    {
        LayerKind.Group or LayerKind.Adjustment => false,
        LayerKind.Fill => !layer.Bounds.IsEmpty,
        _ => true,
    };
}
