namespace LayerTools.Ledgers;

/// <summary>
/// Joins what several people's ledgers say of one part: the entry that was set last holds. One without a time is older than any with one; of entries of one time, the one
/// whose text comes last in ordinal order holds. So the outcome depends neither on the order in which ledgers come nor on which were joined before.
/// </summary>
internal static class LedgerMerge
{
    /// <summary>The entry that holds, and those that say something else.</summary>
    /// <param name="said">All entries about one part, at least one.</param>
    public static (LedgerEntry Winner, IReadOnlyList<LedgerEntry> Clashing) Choose(IEnumerable<LedgerEntry> said)
    {
        var ordered = said.Distinct().OrderByDescending(entry => entry.When ?? DateTime.MinValue).ThenByDescending(LedgerText.Spell, StringComparer.Ordinal).ToList();
        return (ordered[0], [.. ordered.Skip(1).Where(entry => Clash(ordered[0], entry))]);
    }

    /// <summary>All entries, one of each part, where no layered file is at hand.</summary>
    public static IReadOnlyList<LedgerEntry> Merge(IEnumerable<LedgerEntry> entries) => [.. entries.GroupBy(LedgerKey.Of).Select(group => Choose(group).Winner)];

    /// <summary>Nobody clashes with what he said before, nor with what nobody said.</summary>
    private static bool Clash(LedgerEntry one, LedgerEntry other) =>
        (one.State != other.State || one.Note != other.Note) && one.When is not null && other.When is not null && (one.Who != other.Who || (one.Who.Length == 0 && one.When != other.When));
}
