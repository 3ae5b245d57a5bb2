namespace LayerTools.Pixels.Compositing;

/// <summary>
/// Shrinks a picture while it is drawn: every pixel of the result is the mean of the rectangle it covers (box filter) over
/// premultiplied colours, so that what is transparent lends no colour. Never enlarges.
/// </summary>
internal sealed class ShrinkSink : IRowSink
{
    private readonly int colorCount;
    private readonly bool isLinear;
    private readonly BoxSpans columns;
    private readonly BoxSpans rows;
    private readonly float[] sums;
    private readonly int lineLength;
    private float[] lines = [];
    private int top;
    private int count;
    private int resultRow;

    /// <summary>A sink that makes a picture of at most the given size, in the proportions of what is drawn.</summary>
    /// <param name="colorCount">1 for grey, 3 for red, green, blue.</param>
    /// <param name="width">Columns drawn, px.</param>
    /// <param name="height">Rows drawn, px.</param>
    /// <param name="maxWidth">Most columns of the result, px.</param>
    /// <param name="maxHeight">Most rows of the result, px.</param>
    /// <param name="isLinear">Whether colours are linear light, as at 32 bit, and need the sRGB encoding to be looked at.</param>
    public ShrinkSink(int colorCount, int width, int height, int maxWidth, int maxHeight, bool isLinear)
    {
        this.colorCount = colorCount;
        this.isLinear = isLinear;
        var scale = Math.Min(1, Math.Min(maxWidth / (double)width, maxHeight / (double)height));
        columns = new BoxSpans(width, Math.Max(1, (int)Math.Round(width * scale)));
        rows = new BoxSpans(height, Math.Max(1, (int)Math.Round(height * scale)));
        lineLength = columns.ResultLength * (colorCount + 1);
        sums = new float[lineLength];
        Raster = new Raster(columns.ResultLength, rows.ResultLength);
    }

    public Raster Raster { get; }

    public void BeginBand(int top, int count)
    {
        this.top = top;
        this.count = count;
        if (lines.Length < count * lineLength) lines = new float[count * lineLength];
    }

    public void Accept(int row, PixelRow pixels)
    {
        var line = lines.AsSpan((row - top) * lineLength, lineLength);
        for (var channel = 0; channel < colorCount; channel++) columns.Average(pixels.Colors[channel], line.Slice(channel * columns.ResultLength, columns.ResultLength));
        columns.Average(pixels.Alpha, line.Slice(colorCount * columns.ResultLength, columns.ResultLength));
    }

    /// <summary>Adds the rows in their order, so that the sums do not depend on which thread drew which.</summary>
    public void EndBand()
    {
        for (var row = top; row < top + count; row++)
        {
            while (resultRow < rows.ResultLength && rows.GetWeight(row, resultRow) is var weight and > 0)
            {
                Add(lines.AsSpan((row - top) * lineLength, lineLength), weight);
                if (!rows.IsLast(row, resultRow)) break;
                Finish(Raster.Row(resultRow++));
            }
        }
    }

    private void Add(ReadOnlySpan<float> line, float weight)
    {
        for (var i = 0; i < line.Length; i++) sums[i] += line[i] * weight;
    }

    private void Finish(Span<byte> pixels)
    {
        var width = columns.ResultLength;
        for (var x = 0; x < width; x++)
        {
            var alpha = sums[(colorCount * width) + x];
            for (var place = 0; place < 3; place++)
            {
                var color = sums[(Math.Min(place, colorCount - 1) * width) + x];
                pixels[(4 * x) + place] = Encode(alpha > 0 ? color / alpha : 0f, isLinear);
            }

            pixels[(4 * x) + 3] = Encode(alpha, isLight: false);
        }

        Array.Clear(sums, 0, sums.Length);
    }

    private static byte Encode(float value, bool isLight)
    {
        if (isLight) return SampleConverter.EncodeLight(value);
        return (byte)((value > 0 ? Math.Min(value, 1f) * byte.MaxValue : 0f) + 0.5f);
    }
}
