namespace LayerTools.Measures.Symmetry;

/// <summary>Two coverages, one to be compared with the reflection of the other. For a part in the middle both are the same.</summary>
internal sealed class MirrorPair
{
    /// <summary>Stored backwards, so that a reflected row is read forwards.</summary>
    private readonly CoveragePlane reversed;

    public MirrorPair(CoveragePlane one, CoveragePlane other)
    {
        (One, Other) = (one, other);
        reversed = other.Reverse();
    }

    public CoveragePlane One { get; }

    public CoveragePlane Other { get; }

    public bool IsOne => ReferenceEquals(One, Other);

    /// <summary>The smallest doubled axis across which the rectangles meet.</summary>
    public int FirstAxis => One.Bounds.Left + Other.Bounds.Left + 1;

    /// <summary>The largest one.</summary>
    public int LastAxis => One.Bounds.Right + Other.Bounds.Right - 1;

    /// <summary>Both at half size.</summary>
    public MirrorPair Halve()
    {
        var one = One.Halve();
        return new MirrorPair(one, IsOne ? one : Other.Halve());
    }

    /// <summary>Σ a · b across an axis.</summary>
    /// <param name="doubledAxis">Twice the x of the axis.</param>
    public long SumProducts(int doubledAxis) => Sum(doubledAxis, ByteProducts.Dot);

    /// <summary>Σ min(a, b) across an axis.</summary>
    /// <param name="doubledAxis">Twice the x of the axis.</param>
    public long SumMinima(int doubledAxis) => Sum(doubledAxis, ByteProducts.Min);

    private long Sum(int doubledAxis, Func<byte[], int, byte[], int, int, long> sumRow)
    {
        var reflected = Other.Bounds.Reflect(doubledAxis);
        var shared = One.Bounds.Intersect(reflected);
        var sum = 0L;
        for (var y = shared.Top; y < shared.Bottom; y++)
        {
            sum += sumRow(One.Values, One.RowStart(y) + shared.Left - One.Bounds.Left, reversed.Values, reversed.RowStart(y) + shared.Left - reflected.Left, shared.Width);
        }

        return sum;
    }
}
