namespace LayerTools.Measures.Symmetry;

/// <summary>What is compared with its reflection.</summary>
public enum SymmetryKind
{
    /// <summary>All visible parts together.</summary>
    Figure,

    /// <summary>A left part and its opposite.</summary>
    Pair,

    /// <summary>A part without a side, whose left half is compared with its right half.</summary>
    Central,
}
