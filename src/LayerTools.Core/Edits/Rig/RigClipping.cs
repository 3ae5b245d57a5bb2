namespace LayerTools.Edits.Rig;

/// <summary>What becomes of layers that are clipped to a part.</summary>
public enum RigClipping
{
    /// <summary>They are painted into the part.</summary>
    Merge,

    /// <summary>They become parts of their own, cut to the shape of the part they were clipped to.</summary>
    Cut,
}
