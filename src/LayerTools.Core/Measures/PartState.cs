namespace LayerTools.Measures;

/// <summary>How far a part is.</summary>
public enum PartState
{
    /// <summary>It is not finished, or nobody said anything of it.</summary>
    Open,

    /// <summary>It is finished.</summary>
    Done,

    /// <summary>It was finished and has changed since, or somebody wants it looked at again.</summary>
    Recheck,

    /// <summary>It is in the ledger and no longer in the file.</summary>
    Missing,
}
