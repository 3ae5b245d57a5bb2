namespace LayerTools.Measures.Symmetry;

/// <summary>Sums across axes, each made once.</summary>
/// <param name="sum">Makes the sum across an axis, given by twice its x.</param>
internal sealed class AxisSums(Func<int, long> sum)
{
    private readonly Dictionary<int, long> known = [];

    public long this[int doubledAxis] => known.TryGetValue(doubledAxis, out var value) ? value : known[doubledAxis] = sum(doubledAxis);
}
