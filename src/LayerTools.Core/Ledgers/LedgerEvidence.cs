namespace LayerTools.Ledgers;

/// <summary>By what a part was found again in a ledger, in the order in which it is tried.</summary>
public enum LedgerEvidence
{
    /// <summary>By nothing: it is not in the ledger, or not in the file.</summary>
    None,

    /// <summary>By its path.</summary>
    Path,

    /// <summary>By the id that the file stores.</summary>
    Id,

    /// <summary>By its content, which is the same.</summary>
    Fingerprint,

    /// <summary>By what it looks like.</summary>
    Likeness,

    /// <summary>By nothing for certain: there are several that it could be.</summary>
    Ambiguous,
}
