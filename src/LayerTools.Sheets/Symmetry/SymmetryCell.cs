namespace LayerTools.Sheets.Symmetry;

/// <summary>What is true of a pixel and the one across the axis.</summary>
internal enum SymmetryCell
{
    /// <summary>Neither is covered.</summary>
    Clear,

    /// <summary>Both are, in colours that differ by less than <see cref="SymmetryMap.Steps"/> begins with.</summary>
    Same,

    /// <summary>Both are, in colours that differ a little.</summary>
    Slight,

    /// <summary>Both are, in colours that differ visibly.</summary>
    Visible,

    /// <summary>Both are, in colours that differ strongly.</summary>
    Strong,

    /// <summary>Both are, in other colours.</summary>
    Other,

    /// <summary>This one is covered and the other is not.</summary>
    Extra,

    /// <summary>The other one is covered and this is not.</summary>
    Missing,
}
