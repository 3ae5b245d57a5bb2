using LayerTools.Deliveries;
using LayerTools.Model;

namespace LayerTools.Ledgers;

/// <summary>What entries and parts that nothing certain joined could be: those of one path, of one content, or that look alike.</summary>
internal sealed class LedgerCandidates
{
    /// <summary>How much of their perceptual hashes has to agree for parts to be alike: 1 for the same, 0 for no likeness at all. Our own value.</summary>
    private const double LeastLikeness = 0.75;

    /// <summary>How many times as wide or high one of two parts may be that are alike. Our own value.</summary>
    private const double MostStretch = 1.5;

    /// <summary>Most that are listed for one; more help nobody.</summary>
    private const int Most = 8;

    /// <summary>The hash of an even surface, which looks like every other.</summary>
    private static readonly string Even = new('f', 64);

    private readonly Dictionary<LedgerEntry, List<Layer>> ofEntries = [];
    private readonly Dictionary<Layer, List<LedgerEntry>> ofLayers = [];

    private LedgerCandidates()
    {
    }

    /// <summary>Looks at all pairs.</summary>
    /// <exception cref="Errors.LayeredFileException">A channel is damaged, or the file changed on disk.</exception>
    public static LedgerCandidates Find(IReadOnlyList<LedgerEntry> entries, IReadOnlyList<Layer> layers, LedgerParts parts)
    {
        var found = new LedgerCandidates();
        if (entries.Count == 0 || layers.Count == 0) return found;
        var sides = parts.ReadLooks(layers).Zip(layers, (look, layer) => (Layer: layer, Path: layer.LayerPath, Content: parts[layer], Look: look is not null && look.ToString() != Even ? look : null)).ToList();
        foreach (var entry in entries)
        {
            parts.Cancellation.ThrowIfCancellationRequested();
            var look = entry.Look == Even ? null : PartLook.TryParse(entry.Look);
            foreach (var side in sides)
            {
                var isSame = side.Path == entry.LayerPath || (!side.Content.IsEmpty && parts.Holds(side.Layer, entry));
                if (isSame || (look is not null && side.Look is not null && AreAlike(entry.Painted, side.Content.Painted) && look.CompareHash(side.Look) >= LeastLikeness)) found.Add(entry, side.Layer);
            }
        }

        return found;
    }

    /// <summary>The pairs in which each is the only candidate of the other.</summary>
    public IEnumerable<(LedgerEntry Entry, Layer Part)> FindCertain() =>
        ofEntries.Where(pair => pair.Value.Count == 1 && ofLayers[pair.Value[0]].Count == 1).Select(pair => (pair.Key, pair.Value[0]));

    /// <summary>The paths of the entries that a part could be.</summary>
    public IReadOnlyList<string> OfPart(Layer layer) => ofLayers.TryGetValue(layer, out var found) ? [.. found.Select(entry => entry.LayerPath)] : [];

    /// <summary>The paths of the parts that an entry could be about.</summary>
    public IReadOnlyList<string> OfEntry(LedgerEntry entry) => ofEntries.TryGetValue(entry, out var found) ? [.. found.Select(layer => layer.LayerPath)] : [];

    private void Add(LedgerEntry entry, Layer layer)
    {
        Add(ofEntries, entry, layer);
        Add(ofLayers, layer, entry);
    }

    private static void Add<TKey, TItem>(Dictionary<TKey, List<TItem>> lists, TKey key, TItem item)
        where TKey : notnull
    {
        if (!lists.TryGetValue(key, out var list)) lists.Add(key, list = []);
        if (list.Count < Most) list.Add(item);
    }

    private static bool AreAlike(Bounds one, Bounds other) => AreAlike(one.Width, other.Width) && AreAlike(one.Height, other.Height);

    private static bool AreAlike(int one, int other) => Math.Max(one, other) <= Math.Min(one, other) * MostStretch;
}
