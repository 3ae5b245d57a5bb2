namespace LayerTools.Pixels.Parts;

/// <summary>
/// Makes a picture smaller while its rows come in, so that only the small picture is ever held. Each small pixel is the mean of exactly
/// the area it covers, in linear light and weighted by opacity: transparent pixels add no colour, so edges get no fringes.
/// All sums are whole numbers: a column of the source is <c>width of the result</c> units wide and a column of the result
/// <c>width of the source</c> units, so shares of pixels need no fractions, and 16 bits of light × 8 of opacity × area stay below 2^63.
/// </summary>
internal sealed class AreaReducer
{
    /// <summary>Columns or rows of the largest source, px: beyond, sums could overflow.</summary>
    public const int LargestSide = 1 << 19;

    private readonly int sourceWidth;
    private readonly int sourceHeight;
    private readonly Raster result;
    private readonly ulong[] row;
    private readonly ulong[] sums;
    private int nextSourceRow;
    private int nextResultRow;
    private bool hasSums;

    /// <summary>Sides in px, all 1 or more; the result is nowhere larger than the source, and the source not larger than <see cref="LargestSide"/>.</summary>
    public AreaReducer(int sourceWidth, int sourceHeight, int width, int height)
    {
        if (sourceWidth > LargestSide) throw new ArgumentOutOfRangeException(nameof(sourceWidth));
        if (sourceHeight > LargestSide) throw new ArgumentOutOfRangeException(nameof(sourceHeight));
        if (width < 1 || width > sourceWidth) throw new ArgumentOutOfRangeException(nameof(width));
        if (height < 1 || height > sourceHeight) throw new ArgumentOutOfRangeException(nameof(height));
        this.sourceWidth = sourceWidth;
        this.sourceHeight = sourceHeight;
        result = new Raster(width, height);
        row = new ulong[4 * width];
        sums = new ulong[4 * width];
    }

    /// <summary>Takes the next row: samples of each colour and opacity, one byte a pixel.</summary>
    public void AddRow(ReadOnlySpan<byte> red, ReadOnlySpan<byte> green, ReadOnlySpan<byte> blue, ReadOnlySpan<byte> alpha)
    {
        SumRow(red, green, blue, alpha);
        Pass(isBlank: false);
    }

    /// <summary>Takes the next row, whose pixels are all transparent.</summary>
    public void AddBlankRow() => Pass(isBlank: true);

    /// <summary>The small picture, once all rows were added.</summary>
    public Raster Finish() => nextSourceRow == sourceHeight ? result : throw new InvalidOperationException("Rows are missing.");

    /// <summary>Gives a row's sums to the row of the result it lies in, or to two, by their shares of it. The row is as many units tall as the result has rows.</summary>
    private void Pass(bool isBlank)
    {
        if (nextSourceRow == sourceHeight) throw new InvalidOperationException("All rows were added.");
        var top = (long)nextSourceRow * result.Height;
        var bottom = top + result.Height;
        while (top < bottom)
        {
            var line = (long)(nextResultRow + 1) * sourceHeight;
            var end = Math.Min(line, bottom);
            if (!isBlank) Accumulate((ulong)(end - top));
            if (end == line) FinishRow();
            top = end;
        }

        nextSourceRow++;
    }

    private void SumRow(ReadOnlySpan<byte> red, ReadOnlySpan<byte> green, ReadOnlySpan<byte> blue, ReadOnlySpan<byte> alpha)
    {
        var unit = (ulong)result.Width;
        for (var x = 0; x < result.Width; x++)
        {
            var left = (long)x * sourceWidth;
            var right = left + sourceWidth;
            var first = (int)(left / result.Width);
            var last = (int)((right - 1) / result.Width);
            var sum = default(Light);
            if (first == last)
            {
                sum.Add(red, green, blue, alpha, first, last + 1, (ulong)(right - left));
            }
            else
            {
                sum.Add(red, green, blue, alpha, first, first + 1, (ulong)((long)(first + 1) * result.Width - left));
                sum.Add(red, green, blue, alpha, first + 1, last, unit);
                sum.Add(red, green, blue, alpha, last, last + 1, (ulong)(right - (long)last * result.Width));
            }

            row[4 * x] = sum.Red;
            row[(4 * x) + 1] = sum.Green;
            row[(4 * x) + 2] = sum.Blue;
            row[(4 * x) + 3] = sum.Alpha;
        }
    }

    private void Accumulate(ulong weight)
    {
        hasSums = true;
        for (var i = 0; i < sums.Length; i++) sums[i] += row[i] * weight;
    }

    private void FinishRow()
    {
        if (hasSums)
        {
            var area = (ulong)sourceWidth * (ulong)sourceHeight;
            var pixels = result.Row(nextResultRow);
            for (var i = 0; i < sums.Length; i += 4)
            {
                var alpha = sums[i + 3];
                if (alpha == 0) continue;
                for (var channel = 0; channel < 3; channel++) pixels[i + channel] = LinearLight.Encode((uint)((sums[i + channel] + alpha / 2) / alpha));
                pixels[i + 3] = (byte)((alpha + area / 2) / area);
            }

            Array.Clear(sums, 0, sums.Length);
            hasSums = false;
        }

        nextResultRow++;
    }

    private struct Light
    {
        public ulong Red;
        public ulong Green;
        public ulong Blue;
        public ulong Alpha;

        public void Add(ReadOnlySpan<byte> red, ReadOnlySpan<byte> green, ReadOnlySpan<byte> blue, ReadOnlySpan<byte> alpha, int from, int to, ulong weight)
        {
            var light = LinearLight.Amounts;
            ulong r = 0, g = 0, b = 0, a = 0;
            for (var x = from; x < to; x++)
            {
                var opacity = (uint)alpha[x];
                if (opacity == 0) continue;
                r += light[red[x]] * opacity;
                g += light[green[x]] * opacity;
                b += light[blue[x]] * opacity;
                a += opacity;
            }

            Red += r * weight;
            Green += g * weight;
            Blue += b * weight;
            Alpha += a * weight;
        }
    }
}
