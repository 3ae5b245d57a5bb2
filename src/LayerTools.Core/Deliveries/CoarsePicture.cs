namespace LayerTools.Deliveries;

/// <summary>A rectangle of the canvas on a small square grid: how a part looks from afar.</summary>
/// <param name="Side">Blocks along each side.</param>
/// <param name="Pixels">Premultiplied red, green, blue and alpha of each block, rows from the top.</param>
internal sealed record CoarsePicture(int Side, byte[] Pixels)
{
    /// <summary>How alike two pictures of one grid are: 1 less the mean difference of a channel over what any of both covers.</summary>
    public double Compare(CoarsePicture other)
    {
        // Plain arithmetic in whole spans: files of thousands of layers compare millions of pictures.
        ReadOnlySpan<byte> one = Pixels;
        var two = other.Pixels.AsSpan(0, one.Length);
        var (sum, covered) = (0, 0);
        for (var i = 0; i < one.Length; i++)
        {
            var difference = one[i] - two[i];
            sum += difference < 0 ? -difference : difference;
        }

        for (var i = 3; i < one.Length; i += 4) covered += 4 * (one[i] > two[i] ? one[i] : two[i]);

        return covered == 0 ? 1 : Math.Max(0, 1 - ((double)sum / covered));
    }
}
