namespace LayerTools.Deliveries;

/// <summary>A rectangle of the canvas on a small square grid: how a part looks from afar.</summary>
/// <param name="Side">Blocks along each side.</param>
/// <param name="Pixels">Premultiplied red, green, blue and alpha of each block, rows from the top.</param>
internal sealed record CoarsePicture(int Side, byte[] Pixels)
{
    /// <summary>How alike two pictures of one grid are: 1 less the mean difference of a channel over what any of both covers.</summary>
    public double Compare(CoarsePicture other)
    {
        var (sum, covered) = (0L, 0L);
        for (var i = 0; i < Pixels.Length; i += 4)
        {
            var weight = Math.Max(Pixels[i + 3], other.Pixels[i + 3]);
            if (weight == 0) continue;
            covered += 4L * weight;
            for (var channel = 0; channel < 4; channel++) sum += Math.Abs(Pixels[i + channel] - other.Pixels[i + channel]);
        }

        return covered == 0 ? 1 : Math.Max(0, 1 - ((double)sum / covered));
    }
}
