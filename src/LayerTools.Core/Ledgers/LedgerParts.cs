using System.Text;
using LayerTools.Deliveries;
using LayerTools.Measures;
using LayerTools.Model;

namespace LayerTools.Ledgers;

/// <summary>
/// The parts of a file that a ledger is about, front to back, and what they hold, pending edits included: layers that are no groups, adjustments or fills, and neither backdrops,
/// sketches nor guides by their names. Empty layers are among them, since a part may have been rubbed out.
/// </summary>
internal sealed class LedgerParts : IDisposable
{
    private readonly ContentCache contents;

    /// <param name="file">The file.</param>
    /// <param name="options">Which layers are no parts.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <exception cref="Errors.LayeredFileException">A channel is damaged, or the file changed on disk.</exception>
    public LedgerParts(LayerFile file, StatusOptions options, CancellationToken cancellation)
    {
        (File, Cancellation) = (file, cancellation);
        HasMarks = file.GetLayers().Any(layer => layer.Mark != Mark.None);
        var found = Find(file, options);
        Layers = [.. file.GetLayers().Where(found.Contains)];
        contents = new ContentCache(file, cancellation);
        try
        {
            contents.Read(Layers, withLooks: false);
        }
        catch
        {
            contents.Dispose();
            throw;
        }
    }

    /// <summary>The parts of a file, without looking at what they hold.</summary>
    public static HashSet<Layer> Find(LayerFile file, StatusOptions options) =>
        [.. file.GetLayers().Where(layer => !layer.IsGroup && layer.Kind is not (LayerKind.Adjustment or LayerKind.Fill) && options.FindRole(layer) == LayerRole.Part)];

    public LayerFile File { get; }

    public CancellationToken Cancellation { get; }

    /// <summary>Whether any layer or group of the file carries a mark.</summary>
    public bool HasMarks { get; }

    public IReadOnlyList<Layer> Layers { get; }

    /// <summary>What a part holds, without its look.</summary>
    public PartContent this[Layer layer] => contents[layer];

    /// <summary>Whether a part holds what an entry says; where it lies does not matter.</summary>
    public bool Holds(Layer layer, LedgerEntry entry) => contents[layer].Pixels == entry.Pixels && contents[layer].Mask == entry.Mask;

    /// <summary>What parts look like from afar; null where that cannot be told.</summary>
    public IReadOnlyList<PartLook?> ReadLooks(IReadOnlyList<Layer> layers)
    {
        contents.Read(layers, withLooks: true);
        return [.. layers.Select(layer => contents[layer].Look)];
    }

    /// <summary>A fingerprint of all parts: their paths, what they hold and where it lies.</summary>
    public string ReadVersion()
    {
        using var hash = new ContentHash();
        foreach (var layer in Layers)
        {
            var content = contents[layer];
            var text = Encoding.UTF8.GetBytes($"{layer.LayerPath}\n{content.Pixels}\n{content.Mask}\n{content.Painted}");
            hash.Add(text.Length);
            hash.Add(text, 0, text.Length);
        }

        return hash.Complete();
    }

    public void Dispose() => contents.Dispose();
}
