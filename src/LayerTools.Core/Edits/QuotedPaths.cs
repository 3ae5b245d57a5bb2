using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>Layers in a sentence for the user.</summary>
internal static class QuotedPaths
{
    /// <summary>The layers' paths, each in quotes, with commas between them.</summary>
    public static string Join(IEnumerable<Layer> layers) => string.Join(", ", layers.Select(layer => $"'{layer.LayerPath}'"));
}
