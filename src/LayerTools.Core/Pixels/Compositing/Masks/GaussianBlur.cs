namespace LayerTools.Pixels.Compositing.Masks;

/// <summary>
/// A Gaussian blur by running means: four passes of a box whose width may have a fraction, with together the variance of the Gaussian; never more than 1 % away
/// from it. The feather that files store with a mask is taken as the standard deviation (from memory; the real files at hand that have
/// feathered masks hold no picture to measure it on).
/// </summary>
internal static class GaussianBlur
{
    private const int Passes = 4;

    /// <summary>More than any program lets its users choose; files can say what they like.</summary>
    private const double LargestSigma = 1000;

    /// <summary>How far, px, a sample has an influence.</summary>
    public static int GetReach(double sigma) => (int)Math.Min(1 << 20, Math.Ceiling(Passes * (GetRadius(sigma) + 1)));

    /// <summary>Blurs rows of samples in both directions.</summary>
    /// <param name="rows">The rows, from the top.</param>
    /// <param name="width">Samples of a row.</param>
    /// <param name="height">Rows.</param>
    /// <param name="first">The first column that is wanted.</param>
    /// <param name="count">How many columns are wanted.</param>
    /// <param name="outside">The value all around.</param>
    /// <param name="sigma">Standard deviation, px, more than 0.</param>
    /// <returns>The wanted columns of all rows, with 65535 for 1.</returns>
    public static ushort[] Blur(IEnumerable<float[]> rows, int width, int height, int first, int count, float outside, double sigma)
    {
        var blurred = new ushort[count * height];
        var radius = GetRadius(sigma);
        var line = new float[Math.Max(width, height)];
        var scratch = new float[line.Length];
        var y = 0;
        foreach (var row in rows)
        {
            Array.Copy(row, line, width);
            BlurLine(ref line, ref scratch, width, outside, radius);
            for (var x = 0; x < count; x++) blurred[(y * count) + x] = Pack(line[first + x]);
            y++;
        }

        for (var x = 0; x < count; x++)
        {
            for (y = 0; y < height; y++) line[y] = blurred[(y * count) + x] / (float)ushort.MaxValue;
            BlurLine(ref line, ref scratch, height, outside, radius);
            for (y = 0; y < height; y++) blurred[(y * count) + x] = Pack(line[y]);
        }

        return blurred;
    }

    private static ushort Pack(float value) => (ushort)((Math.Max(0f, Math.Min(1f, value)) * ushort.MaxValue) + 0.5f);

    /// <summary>
    /// The box's radius: whole pixels each side with weight 1, and one more with the fraction as its weight. With n whole ones and fraction f the variance
    /// is (n(n + 1)(2n + 1)/3 + 2f(n + 1)²) / (2n + 1 + 2f); n is the greatest whose plain box is not too wide, and f follows.
    /// </summary>
    private static double GetRadius(double sigma)
    {
        sigma = Math.Min(sigma, LargestSigma);
        var variance = sigma * sigma / Passes;
        var whole = Math.Floor((Math.Sqrt((12 * variance) + 1) - 1) / 2);
        var plain = whole * (whole + 1) * ((2 * whole) + 1) / 3;
        var next = (whole + 1) * (whole + 1);
        var fraction = ((variance * ((2 * whole) + 1)) - plain) / (2 * (next - variance));
        return whole + Math.Max(0, Math.Min(1, fraction));
    }

    private static void BlurLine(ref float[] line, ref float[] scratch, int length, float outside, double radius)
    {
        for (var pass = 0; pass < Passes; pass++)
        {
            Average(line, scratch, length, outside, radius);
            (line, scratch) = (scratch, line);
        }
    }

    private static void Average(float[] source, float[] target, int length, float outside, double radius)
    {
        var whole = (int)Math.Min(radius, int.MaxValue / 8);
        var fraction = radius - whole;
        var share = 1 / ((2 * whole) + 1 + (2 * fraction));
        var sum = 0.0;
        for (var i = -whole; i <= whole; i++) sum += Get(source, length, outside, i);
        for (var i = 0; i < length; i++)
        {
            var before = Get(source, length, outside, i - whole - 1);
            var after = Get(source, length, outside, i + whole + 1);
            target[i] = (float)((sum + (fraction * (before + after))) * share);
            sum += after - Get(source, length, outside, i - whole);
        }
    }

    private static float Get(float[] line, int length, float outside, int at) => at >= 0 && at < length ? line[at] : outside;
}
