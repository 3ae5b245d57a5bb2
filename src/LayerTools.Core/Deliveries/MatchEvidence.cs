namespace LayerTools.Deliveries;

/// <summary>By what a layer was found again, the strongest evidence first.</summary>
public enum MatchEvidence
{
    /// <summary>By nothing: it is in one of both files only.</summary>
    None,

    /// <summary>By the id that the files store.</summary>
    Id,

    /// <summary>By its path.</summary>
    Path,

    /// <summary>By its content, which is the same.</summary>
    Fingerprint,

    /// <summary>By what it looks like, or for a group by what is in it.</summary>
    Likeness,
}
