namespace LayerTools.Ledgers;

/// <summary>Joins ledgers that several people kept of one file. The result does not depend on the order they come in.</summary>
public static class LedgerMerge
{
    /// <summary>Joins ledgers. Of entries about one path, the one that was set last wins; one without a time is older than any with one. Of entries of one time, the one whose text comes later in ordinal order wins.</summary>
    /// <param name="ledgers">The ledgers, at least one.</param>
    /// <returns>The joined ledger, and the entries that lost against one that says something else.</returns>
    public static (LayerLedger Ledger, IReadOnlyList<LedgerClash> Clashes) Merge(IReadOnlyList<LayerLedger> ledgers)
    {
        if (ledgers.Count == 0) throw new ArgumentException("There is no ledger.", nameof(ledgers));
        var (entries, clashes) = (new List<LedgerEntry>(), new List<LedgerClash>());
        foreach (var group in ledgers.SelectMany(ledger => ledger.Entries).GroupBy(entry => entry.LayerPath, StringComparer.Ordinal).OrderBy(group => group.Key, StringComparer.Ordinal))
        {
            var ordered = group.Distinct().OrderByDescending(entry => entry.When ?? DateTime.MinValue).ThenByDescending(Spell, StringComparer.Ordinal).ToList();
            entries.Add(ordered[0]);
            clashes.AddRange(ordered.Skip(1).Where(entry => entry.State != ordered[0].State || entry.Note != ordered[0].Note).Select(entry => new LedgerClash(ordered[0], entry)));
        }

        // The version of the ledger that was written last, as far as its entries tell.
        var latest = ledgers.OrderByDescending(ledger => ledger.Entries.Max(entry => entry.When) ?? DateTime.MinValue).ThenByDescending(ledger => ledger.FileVersion, StringComparer.Ordinal).First();
        return (latest with { Entries = entries }, clashes);
    }

    private static string Spell(LedgerEntry entry) => entry.ToString();
}
