using LayerTools.Deliveries;

namespace LayerTools.Ledgers;

/// <summary>
/// Finds the entries of a ledger again among the parts of a file: by path, then by id, then by fingerprint, then by likeness. Each of them counts only where it points to one part
/// and that part is pointed to by one entry; where there are several candidates, they are reported and none is taken.
/// </summary>
internal sealed class LedgerMatcher
{
    /// <summary>How much of their perceptual hashes has to agree for parts to be alike: 1 for the same, 0 for no likeness at all.</summary>
    private const double LeastLikeness = 0.75;

    private readonly List<LedgerEntry> entries;
    private readonly List<LedgerPart> parts;
    private readonly List<LedgerMatch> matches = [];

    private LedgerMatcher(IEnumerable<LedgerEntry> entries, IEnumerable<LedgerPart> parts) => (this.entries, this.parts) = ([.. entries], [.. parts]);

    /// <summary>Every entry and every part once: those that were found again, then parts without an entry, then entries without a part.</summary>
    public static IReadOnlyList<LedgerMatch> Match(IEnumerable<LedgerEntry> entries, IEnumerable<LedgerPart> parts) => new LedgerMatcher(entries, parts).Match();

    private List<LedgerMatch> Match()
    {
        MatchBy(LedgerEvidence.Path, entry => entry.LayerPath, part => part.Layer.LayerPath);
        if (TellWhetherIdsAgree()) MatchBy(LedgerEvidence.Id, entry => entry.Id?.ToString(System.Globalization.CultureInfo.InvariantCulture), part => part.Layer.Id?.ToString(System.Globalization.CultureInfo.InvariantCulture));
        MatchBy(LedgerEvidence.Fingerprint, entry => entry.Pixels.Length == 0 ? null : entry.Pixels + entry.Mask, part => part.Content.IsEmpty ? null : part.Content.Pixels + part.Content.Mask);
        MatchByLikeness();
        var left = FindCandidates();
        return [.. matches, .. parts.Select(part => Leave(null, part, left.OfParts[part])), .. entries.Select(entry => Leave(entry, null, left.OfEntries[entry]))];
    }

    private static LedgerMatch Leave(LedgerEntry? entry, LedgerPart? part, IReadOnlyList<string> candidates) =>
        new(entry, part, candidates.Count > 0 ? LedgerEvidence.Ambiguous : LedgerEvidence.None, candidates);

    private void MatchBy(LedgerEvidence evidence, Func<LedgerEntry, string?> keyOfEntry, Func<LedgerPart, string?> keyOfPart)
    {
        var byKey = parts.Where(part => keyOfPart(part) is not null).GroupBy(part => keyOfPart(part)!, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.ToList(), StringComparer.Ordinal);
        foreach (var group in entries.Where(entry => keyOfEntry(entry) is not null).GroupBy(entry => keyOfEntry(entry)!, StringComparer.Ordinal).ToList())
        {
            if (group.Count() == 1 && byKey.TryGetValue(group.Key, out var found) && found.Count == 1) Take(group.First(), found[0], evidence);
        }
    }

    private void MatchByLikeness()
    {
        var alike = FindAlike();
        foreach (var entry in entries.ToList())
        {
            if (alike.Where(pair => pair.Entry == entry).ToList() is [var only] && alike.Count(pair => pair.Part == only.Part) == 1) Take(entry, only.Part, LedgerEvidence.Likeness);
        }
    }

    private List<(LedgerEntry Entry, LedgerPart Part)> FindAlike()
    {
        var looks = entries.Select(entry => (Entry: entry, Look: PartLook.TryParse(entry.Look))).Where(item => item.Look is not null).ToList();
        return [.. looks.SelectMany(item => parts.Where(part => part.Content.Look is { } look && item.Look!.CompareHash(look) >= LeastLikeness).Select(part => (item.Entry, part)))];
    }

    /// <summary>What each that is left could be: those of the same path, of the same content, or that look alike.</summary>
    private (Dictionary<LedgerPart, IReadOnlyList<string>> OfParts, Dictionary<LedgerEntry, IReadOnlyList<string>> OfEntries) FindCandidates()
    {
        var pairs = new HashSet<(LedgerEntry Entry, LedgerPart Part)>(FindAlike());
        foreach (var entry in entries)
        {
            pairs.UnionWith(parts.Where(part => part.Layer.LayerPath == entry.LayerPath || (!part.Content.IsEmpty && part.Holds(entry))).Select(part => (entry, part)));
        }

        return (parts.ToDictionary(part => part, part => (IReadOnlyList<string>)[.. pairs.Where(pair => pair.Part == part).Select(pair => pair.Entry.LayerPath)]),
            entries.ToDictionary(entry => entry, entry => (IReadOnlyList<string>)[.. pairs.Where(pair => pair.Entry == entry).Select(pair => pair.Part.Layer.LayerPath)]));
    }

    /// <summary>Programs that make a file anew may give ids anew; parts that were found by path tell.</summary>
    private bool TellWhetherIdsAgree()
    {
        var known = matches.Where(match => match.Entry!.Id is not null && match.Part!.Layer.Id is not null).ToList();
        return 2 * known.Count(match => match.Entry!.Id == match.Part!.Layer.Id) >= known.Count;
    }

    private void Take(LedgerEntry entry, LedgerPart part, LedgerEvidence evidence)
    {
        matches.Add(new LedgerMatch(entry, part, evidence, []));
        entries.Remove(entry);
        parts.Remove(part);
    }
}
