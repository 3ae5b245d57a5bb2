using FftSharp;

namespace LayerTools.Measures.Detail;

/// <summary>
/// Traces of resampling: between the samples of the smaller picture an enlarged one is interpolated, so that steps between neighbours are larger and smaller in
/// turn, with the period of the enlargement, at the same places in all rows and in all columns. After A. Gallagher, "Detection of linear and cubic
/// interpolation in JPEG compressed images" (2005), who sums second differences; first ones are taken too, since at a factor of 2 only these alternate.
/// </summary>
internal sealed class ResamplingTraces
{
    /// <summary>Samples of a spectrum; longer lines are cut.</summary>
    public const int Length = 4096;

    /// <summary>Least frequency that is looked at, cycles per px; below lies the figure itself.</summary>
    private const double LowestFrequency = 0.19;

    /// <summary>Bins on both sides whose median is the noise that a line has to stand out from: the figure's own detail gets less with the frequency.</summary>
    private const int NoiseReach = 200;

    private const int NoiseStep = 50;

    /// <summary>The most that a step counts, levels of 255, so that outlines do not outweigh all else.</summary>
    private const float StrongestStep = 16;

    /// <summary>Bins that a line may differ by between rows and columns.</summary>
    private const int Tolerance = 4;

    private const int Neighbourhood = 6;

    private readonly double[] strength;

    private ResamplingTraces(double[] strength) => this.strength = strength;

    /// <summary>How much the strongest line stands out in rows and columns alike, times the median of all; drawn art stays below 5.</summary>
    public double Strongest => strength.Skip(BinOf(LowestFrequency)).Max();

    /// <summary>The same at those lines of a grid of 8 px, as blocks of JPEG leave it, that enlargements hardly have together.</summary>
    public double GridStrength => Math.Min(StrengthAt(1.0 / 8), StrengthAt(3.0 / 8));

    public static ResamplingTraces Find(LumaPlane plane, LumaPlane transposed)
    {
        var strength = new double[(Length / 2) + 1];
        for (var order = 1; order <= 2; order++)
        {
            var (rows, columns) = (Spectrum(SumSteps(plane, order)), Spectrum(SumSteps(transposed, order)));
            for (var i = 0; i < strength.Length; i++) strength[i] = Math.Max(strength[i], Math.Min(rows[i], columns[i]));
        }

        return new ResamplingTraces(strength);
    }

    /// <summary>The frequencies of the strongest lines, cycles per px, the strongest first.</summary>
    /// <param name="least">How much a line has to stand out.</param>
    /// <param name="count">Most lines.</param>
    public IReadOnlyList<double> FindLines(double least, int count)
    {
        const double LeastShare = 0.25;
        const int Reach = 20;
        var left = strength.Select((value, i) => i < BinOf(LowestFrequency) ? 0 : value).ToArray();
        var lines = new List<double>();
        var strongest = left.Max();
        while (lines.Count < count && left.Max() is var height && height >= Math.Max(least, LeastShare * strongest))
        {
            var peak = Array.IndexOf(left, height);
            // A line is widened to a plateau; its middle is the frequency.
            var plateau = Enumerable.Range(peak, (2 * Tolerance) + 1).TakeWhile(i => i < left.Length && left[i] >= height * 0.999).ToList();
            lines.Add(plateau.Average() / Length);
            for (var i = Math.Max(0, peak - Reach); i <= Math.Min(left.Length - 1, peak + Reach); i++) left[i] = 0;
        }

        return lines;
    }

    private double StrengthAt(double frequency) => strength.Skip(BinOf(frequency) - Tolerance).Take((2 * Tolerance) + 1).Max();

    private static int BinOf(double frequency) => (int)Math.Round(frequency * Length);

    /// <summary>The steps of all rows at each column, as a deviation from those nearby; 0 where hardly anything is painted.</summary>
    private static double[] SumSteps(LumaPlane plane, int order)
    {
        var first = Math.Max(0, (plane.Width - Length) / 2);
        var sums = new double[Math.Min(plane.Width, Length) - order];
        for (var y = 0; y < plane.Height; y++)
        {
            for (var i = 0; i < sums.Length; i++)
            {
                var x = first + i;
                var step = order == 1 ? plane[x + 1, y] - plane[x, y] : plane[x + 2, y] - (2 * plane[x + 1, y]) + plane[x, y];
                sums[i] += Math.Min(StrongestStep, Math.Abs(step));
            }
        }

        var nearby = Enumerable.Range(0, sums.Length).Select(i =>
            Enumerable.Range(i - Neighbourhood, (2 * Neighbourhood) + 1).Sum(j => j < 0 || j >= sums.Length ? 0 : sums[j]) / ((2 * Neighbourhood) + 1)).ToArray();
        var least = nearby.Average() / 5;
        return [.. sums.Select((sum, i) => nearby[i] > least ? (sum / nearby[i]) - 1 : 0)];
    }

    private static double[] Spectrum(double[] line)
    {
        var window = HannWindow.Create(line.Length);
        var samples = new double[Length];
        for (var i = 0; i < line.Length; i++) samples[i] = line[i] * window[i];
        var sizes = FFT.Forward(samples).Take((Length / 2) + 1).Select(value => value.Magnitude).ToArray();
        var noise = FindNoise(sizes);
        return [.. sizes.Select((_, i) => Enumerable.Range(i - Tolerance, (2 * Tolerance) + 1).Max(j => sizes[Math.Min(Math.Max(j, 0), sizes.Length - 1)]) / Math.Max(noise[i / NoiseStep], 1e-9))];
    }

    private static double[] FindNoise(double[] sizes) =>
    [
        .. Enumerable.Range(0, (sizes.Length / NoiseStep) + 1).Select(block =>
        {
            var first = Math.Max(0, (block * NoiseStep) - NoiseReach);
            var nearby = sizes.Skip(first).Take((2 * NoiseReach) + NoiseStep).OrderBy(size => size).ToArray();
            return nearby[nearby.Length / 2];
        }),
    ];
}
