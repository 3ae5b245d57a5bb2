namespace LayerTools.Edits.Rig;

/// <summary>What became of a layer.</summary>
public enum RigOutcome
{
    /// <summary>It was a plain part already.</summary>
    Unchanged,

    /// <summary>It is plain pixels now.</summary>
    Baked,

    /// <summary>It was painted into the part it was clipped to.</summary>
    Merged,

    /// <summary>It is in the file as it was, since it cannot be baked truthfully.</summary>
    Kept,

    /// <summary>It was left out.</summary>
    Dropped,
}
