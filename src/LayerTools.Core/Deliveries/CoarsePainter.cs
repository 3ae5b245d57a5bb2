using LayerTools.Model;
using LayerTools.Pixels.Parts;

namespace LayerTools.Deliveries;

/// <summary>Sums the rows of a part into the blocks of a coarse picture; where no row comes, nothing is painted.</summary>
/// <param name="shown">The rectangle that the picture shows; not empty.</param>
/// <param name="side">Blocks along each side.</param>
internal sealed class CoarsePainter(Bounds shown, int side)
{
    private readonly long[] sums = new long[4 * side * side];

    /// <summary>Adds a row of the part.</summary>
    /// <param name="y">The row, canvas px.</param>
    /// <param name="left">Canvas column of its first pixel.</param>
    /// <param name="opacity">Its opacity.</param>
    /// <param name="colors">Its colours.</param>
    public void Add(int y, int left, ReadOnlySpan<byte> opacity, PartColors colors)
    {
        if (y < shown.Top || y >= shown.Bottom) return;
        var red = colors.Red;
        var green = colors.Green;
        var blue = colors.Blue;
        var line = (int)((long)(y - shown.Top) * side / shown.Height) * side;
        for (var block = 0; block < side; block++)
        {
            var from = Math.Max(shown.Left + FirstPixel(block, shown.Width) - left, 0);
            var to = Math.Min(shown.Left + FirstPixel(block + 1, shown.Width) - left, opacity.Length);
            long r = 0, g = 0, b = 0, a = 0;
            for (var x = from; x < to; x++)
            {
                var alpha = opacity[x];
                if (alpha == 0) continue;
                r += red[x] * alpha;
                g += green[x] * alpha;
                b += blue[x] * alpha;
                a += alpha;
            }

            var place = 4 * (line + block);
            sums[place] += r;
            sums[place + 1] += g;
            sums[place + 2] += b;
            sums[place + 3] += a * byte.MaxValue;
        }
    }

    /// <summary>The picture, once all rows were added.</summary>
    public CoarsePicture Complete()
    {
        var pixels = new byte[sums.Length];
        for (var line = 0; line < side; line++)
        {
            for (var column = 0; column < side; column++)
            {
                // A rectangle of few pixels has blocks without any: those show the pixel that they lie in.
                var (fromX, fromY) = (Source(column, shown.Width), Source(line, shown.Height));
                var area = (long)CountPixels(fromX, shown.Width) * CountPixels(fromY, shown.Height) * byte.MaxValue;
                for (var channel = 0; channel < 4; channel++)
                {
                    var sum = sums[(4 * ((fromY * side) + fromX)) + channel];
                    pixels[(4 * ((line * side) + column)) + channel] = (byte)((sum + (area / 2)) / area);
                }
            }
        }

        return new CoarsePicture(side, pixels);
    }

    private int FirstPixel(int block, int length) => (int)((((long)block * length) + side - 1) / side);

    private int CountPixels(int block, int length) => FirstPixel(block + 1, length) - FirstPixel(block, length);

    /// <summary>The block itself or, where it has no pixel, the nearest before it that has.</summary>
    private int Source(int block, int length)
    {
        while (CountPixels(block, length) == 0) block--;
        return block;
    }
}
