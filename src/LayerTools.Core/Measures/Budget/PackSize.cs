namespace LayerTools.Measures.Budget;

/// <summary>Columns and rows of a box to pack, px, each at least 1.</summary>
internal readonly record struct PackSize(int Width, int Height)
{
    public long Area => (long)Width * Height;

    public PackSize Turned => new(Height, Width);
}
