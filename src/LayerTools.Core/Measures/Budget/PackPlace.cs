namespace LayerTools.Measures.Budget;

/// <summary>Where a packed box lies.</summary>
/// <param name="Page">Its page, counted from 0.</param>
/// <param name="Left">First column on the page, px.</param>
/// <param name="Top">First row on the page, px.</param>
/// <param name="Turned">Whether it is turned by 90°, so that its columns are its rows.</param>
internal readonly record struct PackPlace(int Page, int Left, int Top, bool Turned);
