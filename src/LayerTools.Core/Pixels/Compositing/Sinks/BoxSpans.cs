namespace LayerTools.Pixels.Compositing.Sinks;

/// <summary>Which source pixels each pixel of a shorter line covers, and by how much; the weights of each add up to 1.</summary>
internal sealed class BoxSpans(int sourceLength, int resultLength)
{
    private readonly double step = sourceLength / (double)resultLength;

    public int ResultLength { get; } = resultLength;

    /// <summary>The part that a source pixel has in a pixel of the result.</summary>
    public float GetWeight(int source, int result)
    {
        var begin = Math.Max(source, GetBegin(result));
        var end = Math.Min(source + 1.0, GetBegin(result + 1));
        return (float)(Math.Max(0, end - begin) / step);
    }

    /// <summary>Whether no later source pixel has a part in this pixel of the result.</summary>
    public bool IsLast(int source, int result) => GetWeight(source + 1, result) <= 0;

    /// <summary>A whole line.</summary>
    public void Average(ReadOnlySpan<float> source, Span<float> result)
    {
        for (var i = 0; i < result.Length; i++)
        {
            var first = (int)GetBegin(i);
            var end = GetBegin(i + 1);
            var last = Math.Min(sourceLength, (int)Math.Ceiling(end)) - 1;
            var sum = source[first] * GetWeight(first, i);
            if (last > first)
            {
                var inner = 0f;
                for (var x = first + 1; x < last; x++) inner += source[x];
                sum += (inner * (float)(1 / step)) + (source[last] * GetWeight(last, i));
            }

            result[i] = sum;
        }
    }

    /// <summary>Exact at both ends, where a sum of steps would not be.</summary>
    private double GetBegin(int result) => (double)result * sourceLength / ResultLength;
}
