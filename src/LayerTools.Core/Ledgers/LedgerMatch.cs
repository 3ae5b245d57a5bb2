using LayerTools.Model;

namespace LayerTools.Ledgers;

/// <summary>An entry and the part that it is about.</summary>
/// <param name="Entry">The entry; null for a part that is not in the ledger.</param>
/// <param name="Part">The part; null for an entry whose part is not in the file.</param>
/// <param name="Evidence">By what it was found.</param>
/// <param name="Candidates">The paths of those it could be, where that is not certain: of parts for an entry, of entries for a part. At most 8 are listed.</param>
internal sealed record LedgerMatch(LedgerEntry? Entry, Layer? Part, LedgerEvidence Evidence, IReadOnlyList<string> Candidates);
