using LayerTools.Deliveries;
using LayerTools.Model;

namespace LayerTools.Ledgers;

/// <summary>A part of a file and what it holds now.</summary>
internal sealed record LedgerPart(Layer Layer, PartContent Content)
{
    /// <summary>Whether it holds what an entry says; where it lies does not matter.</summary>
    public bool Holds(LedgerEntry entry) => Content.Pixels == entry.Pixels && Content.Mask == entry.Mask;

    /// <summary>The parts of a file, front to back: all layers that are no groups.</summary>
    /// <exception cref="Errors.LayeredFileException">A channel is damaged, or the file changed on disk.</exception>
    public static IReadOnlyList<LedgerPart> ReadAll(LayerFile file, CancellationToken cancellation)
    {
        using var contents = new ContentCache(file, cancellation);
        var layers = file.GetLayers().Where(layer => !layer.IsGroup).ToList();
        contents.Read(layers, withLooks: true);
        return [.. layers.Select(layer => new LedgerPart(layer, contents[layer]))];
    }
}
