namespace LayerTools.Measures.Budget;

/// <summary>By what boxes are sorted before they are packed, the largest first.</summary>
internal enum PackOrder
{
    Area,
    LongSide,
    ShortSide,
    Perimeter,
    Height,
    Width,
}
