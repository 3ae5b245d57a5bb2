using LayerTools.Measures;

namespace LayerTools.Ledgers;

/// <summary>How far one layer is, joined with what ledgers know of it.</summary>
public sealed record LedgerStatus : LayerStatus
{
    /// <summary>Copies what is known without a ledger.</summary>
    [System.Diagnostics.CodeAnalysis.SetsRequiredMembers]
    internal LedgerStatus(LayerStatus status)
        : base(status)
    {
    }

    /// <summary>What somebody noted; empty for nothing.</summary>
    public string Note { get; init; } = string.Empty;

    /// <summary>Who set state or note; empty where nobody said.</summary>
    public string Who { get; init; } = string.Empty;

    /// <summary>When that was, UTC; null where that is not known.</summary>
    public DateTime? When { get; init; }

    /// <summary>By what the part was found in the ledger.</summary>
    public LedgerEvidence MatchedBy { get; init; }

    /// <summary>The paths of the entries that it could be, where that is not certain, joined by "; "; else empty.</summary>
    public string Candidates { get; init; } = string.Empty;
}
