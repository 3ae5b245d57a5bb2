using LayerTools.Pixels.Colors;

namespace LayerTools.Pixels.Compositing.Sinks;

/// <summary>
/// Shrinks a picture while it is drawn: every pixel of the result is the mean of the rectangle it covers (box filter) over
/// premultiplied colours, so that what is transparent lends no colour. Never enlarges.
/// </summary>
internal sealed class ShrinkSink : IRowSink
{
    private readonly int colorCount;
    private readonly ColorConverter converter;
    private readonly BoxSpans columns;
    private readonly BoxSpans rows;
    private readonly float[] sums;
    private readonly int lineLength;
    private float[] lines = [];
    private int top;
    private int count;
    private int resultRow;

    /// <summary>A sink that makes a picture of at most the given size, in the proportions of what is drawn.</summary>
    /// <param name="converter">Turns the file's colours to RGB.</param>
    /// <param name="width">Columns drawn, px.</param>
    /// <param name="height">Rows drawn, px.</param>
    /// <param name="maxWidth">Most columns of the result, px.</param>
    /// <param name="maxHeight">Most rows of the result, px.</param>
    public ShrinkSink(ColorConverter converter, int width, int height, int maxWidth, int maxHeight)
    {
        this.converter = converter;
        colorCount = converter.ChannelCount;
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
        Span<float> color = stackalloc float[colorCount];
        for (var x = 0; x < width; x++)
        {
            var alpha = sums[(colorCount * width) + x];
            for (var channel = 0; channel < colorCount; channel++) color[channel] = alpha > 0 ? sums[(channel * width) + x] / alpha : 0f;
            if (alpha > 0) converter.Convert(color, pixels.Slice(4 * x, 3));
            else pixels.Slice(4 * x, 3).Clear();
            pixels[(4 * x) + 3] = (byte)((alpha > 0 ? Math.Min(alpha, 1f) * byte.MaxValue : 0f) + 0.5f);
        }

        Array.Clear(sums, 0, sums.Length);
    }
}
