namespace LayerTools.Measures.Budget;

/// <summary>Which of the free places a box gets; the names are those of J. Jylänki, "A Thousand Ways to Pack the Bin" (2010), section 2.3.</summary>
internal enum PackRule
{
    /// <summary>Where the shorter of the two sides that are left over is shortest.</summary>
    BestShortSideFit,

    /// <summary>Where the longer of the two sides that are left over is shortest.</summary>
    BestLongSideFit,

    /// <summary>In the smallest free rectangle.</summary>
    BestAreaFit,

    /// <summary>Where its lower edge lies highest, then farthest to the left.</summary>
    BottomLeft,

    /// <summary>Where most of its edge touches other boxes or the edge of the page.</summary>
    ContactPoint,
}
