using System.Globalization;
using LayerTools.Images;
using LayerTools.Model;

namespace LayerTools.Ledgers;

/// <summary>
/// Finds the entries of a ledger again among the parts of a file: by path, then by id, then by fingerprint, then by likeness. Each of them counts only where it points to one part
/// and that part is pointed to by one entry; where there are several candidates, they are reported and none is taken. Of several parts with one fingerprint, the one that
/// did not move is meant.
/// </summary>
internal sealed class LedgerMatcher
{
    private readonly List<LedgerEntry> entries;
    private readonly List<Layer> layers;
    private readonly LedgerParts parts;
    private readonly List<LedgerMatch> matches = [];

    private LedgerMatcher(IReadOnlyList<LedgerEntry> entries, LedgerParts parts) => (this.entries, layers, this.parts) = ([.. entries.Distinct()], [.. parts.Layers], parts);

    /// <summary>Every entry and every part once: those that were found again, then parts without an entry, then entries without a part.</summary>
    public static IReadOnlyList<LedgerMatch> Match(IReadOnlyList<LedgerEntry> entries, LedgerParts parts) => new LedgerMatcher(entries, parts).Match();

    private List<LedgerMatch> Match()
    {
        // What one round found can leave only one candidate for the next.
        int known;
        do
        {
            known = matches.Count;
            MatchBy(LedgerEvidence.Path, entry => entry.LayerPath, layer => WellFormed.Of(layer.LayerPath));
            if (TellWhetherIdsAgree()) MatchBy(LedgerEvidence.Id, entry => Spell(entry.Id), layer => Spell(layer.Id));
            MatchBy(LedgerEvidence.Fingerprint, entry => entry.Pixels.Length == 0 ? null : Spell(entry.Pixels, entry.Mask, entry.Painted),
                layer => parts[layer].IsEmpty ? null : Spell(parts[layer].Pixels, parts[layer].Mask, parts[layer].Painted));
            MatchBy(LedgerEvidence.Fingerprint, entry => entry.Pixels.Length == 0 ? null : entry.Pixels + entry.Mask, layer => parts[layer].IsEmpty ? null : parts[layer].Pixels + parts[layer].Mask);
        }
        while (matches.Count > known);

        var candidates = LedgerCandidates.Find(entries, layers, parts);
        matches.AddRange(candidates.FindCertain().Select(pair => new LedgerMatch(pair.Entry, pair.Part, LedgerEvidence.Likeness, [])));
        RemoveMatched();
        return
        [
            .. matches,
            .. layers.Select(layer => Leave(null, layer, candidates.OfPart(layer))),
            .. entries.Select(entry => Leave(entry, null, candidates.OfEntry(entry))),
        ];
    }

    private static LedgerMatch Leave(LedgerEntry? entry, Layer? layer, IReadOnlyList<string> candidates) =>
        new(entry, layer, candidates.Count > 0 ? LedgerEvidence.Ambiguous : LedgerEvidence.None, candidates);

    private void MatchBy(LedgerEvidence evidence, Func<LedgerEntry, string?> keyOfEntry, Func<Layer, string?> keyOfLayer)
    {
        var ofEntries = entries.ToLookup(keyOfEntry, StringComparer.Ordinal);
        foreach (var group in layers.ToLookup(keyOfLayer, StringComparer.Ordinal))
        {
            if (group.Key is not null && group.Take(2).ToList() is [var layer] && ofEntries[group.Key].Take(2).ToList() is [var entry]) matches.Add(new LedgerMatch(entry, layer, evidence, []));
        }

        RemoveMatched();
    }

    /// <summary>Programs that make a file anew may give ids anew; parts that were found by path tell.</summary>
    private bool TellWhetherIdsAgree()
    {
        var known = matches.Where(match => match.Entry!.Id is not null && match.Part!.Id is not null).ToList();
        return 2 * known.Count(match => match.Entry!.Id == match.Part!.Id) >= known.Count;
    }

    private void RemoveMatched()
    {
        var (knownEntries, knownLayers) = (new HashSet<LedgerEntry>(matches.Select(match => match.Entry!)), new HashSet<Layer>(matches.Select(match => match.Part!)));
        entries.RemoveAll(knownEntries.Contains);
        layers.RemoveAll(knownLayers.Contains);
    }

    private static string? Spell(int? id) => id?.ToString(CultureInfo.InvariantCulture);

    private static string Spell(string pixels, string mask, Bounds painted) => FormattableString.Invariant($"{pixels} {mask} {painted.Left} {painted.Top}");
}
