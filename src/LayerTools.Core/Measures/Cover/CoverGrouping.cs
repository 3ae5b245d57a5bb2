namespace LayerTools.Measures.Cover;

/// <summary>What cover is told by.</summary>
public enum CoverGrouping
{
    /// <summary>One record for each part, with all its neighbours together.</summary>
    Part,

    /// <summary>One record for each part and each neighbour that covers it.</summary>
    Neighbour,
}
