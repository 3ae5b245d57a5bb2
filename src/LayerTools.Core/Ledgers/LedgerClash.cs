namespace LayerTools.Ledgers;

/// <summary>Two people said different things of one part.</summary>
/// <param name="Winner">What holds: the entry that was set last.</param>
/// <param name="Loser">What was set before it.</param>
public sealed record LedgerClash(LedgerEntry Winner, LedgerEntry Loser);
