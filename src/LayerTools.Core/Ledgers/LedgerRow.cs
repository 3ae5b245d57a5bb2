using LayerTools.Measures;
using LayerTools.Model;

namespace LayerTools.Ledgers;

/// <summary>One part and what the ledgers say of it.</summary>
/// <param name="Layer">The part; null for one that is not in the file any more.</param>
/// <param name="Entry">The entry that holds; null where the ledgers have none, or none for certain.</param>
/// <param name="Evidence">By what the part was found.</param>
/// <param name="Candidates">The paths of the entries it could be.</param>
/// <param name="State">How far it is; null where that depends on which entry it is.</param>
internal sealed record LedgerRow(Layer? Layer, LedgerEntry? Entry, LedgerEvidence Evidence, IReadOnlyList<string> Candidates, PartState? State);
