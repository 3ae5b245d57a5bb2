namespace LayerTools.Errors;

/// <summary>The kinds of trouble with a layered file.</summary>
public enum LayeredFileErrorKind
{
    /// <summary>The bytes are not a layered file of a known format.</summary>
    NotALayeredFile,

    /// <summary>The file ends before a part that it announces.</summary>
    Truncated,

    /// <summary>A length, count or size contradicts the rest of the file.</summary>
    Damaged,

    /// <summary>The file is larger than a limit that protects the machine.</summary>
    LimitExceeded,

    /// <summary>The file uses something that this version cannot do.</summary>
    NotSupported,

    /// <summary>The file changed on disk since it was read.</summary>
    SourceChanged,

    /// <summary>The operating system refused: missing, in use, no permission, disk full.</summary>
    Unavailable,

    /// <summary>An edit that cannot be done as asked.</summary>
    EditRefused,

    /// <summary>A profile that does not follow its schema, or contradicts itself.</summary>
    BadProfile,

    /// <summary>A ledger, or a history of sums, that does not follow its form.</summary>
    BadLedger,
}
