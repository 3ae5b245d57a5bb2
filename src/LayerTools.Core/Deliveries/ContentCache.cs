using LayerTools.Model;

namespace LayerTools.Deliveries;

/// <summary>What the layers of a file hold, read when it is asked for and only once.</summary>
internal sealed class ContentCache(LayerFile file, CancellationToken cancellation) : IDisposable
{
    private readonly ContentReader reader = new(file, cancellation);
    private readonly Dictionary<Layer, PartContent> contents = [];

    public LayerFile File => file;

    public ContentReader Reader => reader;

    /// <summary>What a layer holds, once it was read.</summary>
    public PartContent this[Layer layer] => contents[layer];

    /// <summary>What a layer holds; null if nobody asked for it.</summary>
    public PartContent? Find(Layer layer) => contents.TryGetValue(layer, out var content) ? content : null;

    /// <summary>Reads several layers at once, on all processors.</summary>
    /// <exception cref="Errors.LayeredFileException">A channel is damaged, or the file changed on disk.</exception>
    public void Read(IReadOnlyList<Layer> layers, bool withLooks)
    {
        var unread = layers.Where(layer => !contents.TryGetValue(layer, out var content) || (withLooks && content.Look is null && !content.Painted.IsEmpty)).ToList();
        var read = ParallelWork.Select(unread, layer => reader.Read(layer, withLooks), cancellation);
        for (var i = 0; i < unread.Count; i++) contents[unread[i]] = read[i];
    }

    public void Dispose() => reader.Dispose();
}
