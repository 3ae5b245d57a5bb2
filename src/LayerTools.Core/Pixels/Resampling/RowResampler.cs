using System.Numerics;
using System.Runtime.InteropServices;

namespace LayerTools.Pixels.Resampling;

/// <summary>
/// Makes the rows of a resampled rectangle out of the old one's, as they come. What lies outside the old rectangle counts as 0. Only the rows that are being made are in memory.
/// A row turned end for end, on a canvas turned likewise, gives the same numbers in reverse, to the last bit.
/// </summary>
internal sealed class RowResampler
{
    /// <summary>Takes a new row: its samples, one array for each channel, are valid during the call and may be changed.</summary>
    /// <param name="row">Counted from the top of the new rectangle.</param>
    /// <param name="samples">At least as many as the new rectangle has columns.</param>
    public delegate void RowTaker(int row, float[][] samples);

    private readonly ScaledArea area;
    private readonly RowTaker take;
    private readonly Sum[] sums;
    private readonly float[][] result;
    private readonly int padding;
    private int nextSource;
    private int nextTarget;

    public RowResampler(ScaledArea area, int channels, RowTaker take)
    {
        this.area = area;
        this.take = take;
        padding = Math.Max(0, area.Old.Left - area.Across.StartOf(area.New.Left));
        var width = padding + area.Old.Width + Math.Max(0, area.Across.EndOf(area.New.Right - 1) - area.Old.Right);
        sums = [.. Enumerable.Range(0, area.RowsAtOnce).Select(_ => new Sum(channels, width))];
        result = [.. Enumerable.Range(0, channels).Select(_ => new float[area.New.Width])];
        nextSource = area.Old.Top;
        nextTarget = area.New.Top;
    }

    /// <summary>Takes the next old row.</summary>
    /// <param name="samples">An array for each channel, with a sample for each column of the old rectangle; 0 outside of the next two.</param>
    /// <param name="from">The first column, counted from the rectangle's left, that need not be 0.</param>
    /// <param name="to">The column after the last.</param>
    public void Add(float[][] samples, int from, int to)
    {
        if (from < to)
        {
            for (var row = nextTarget; row < area.New.Bottom && area.Down.StartOf(row) <= nextSource; row++)
            {
                if (nextSource < area.Down.EndOf(row)) SumOf(row).Add(samples, area.Down.WeightsOf(row)[nextSource - area.Down.StartOf(row)], from, to, padding);
            }
        }

        nextSource++;
        while (nextTarget < area.New.Bottom && (area.Down.EndOf(nextTarget) <= nextSource || nextSource >= area.Old.Bottom)) Complete();
    }

    private void Complete()
    {
        var sum = SumOf(nextTarget);
        for (var channel = 0; channel < result.Length; channel++) Gather(sum.Channels[channel], sum.From, sum.To, result[channel]);
        take(nextTarget - area.New.Top, result);
        sum.Clear();
        nextTarget++;
    }

    private Sum SumOf(int row) => sums[(row - area.New.Top) % sums.Length];

    private void Gather(float[] row, int from, int to, float[] gathered)
    {
        for (var x = 0; x < gathered.Length; x++)
        {
            var start = area.Across.StartOf(area.New.Left + x) - area.Old.Left + padding;
            var weights = area.Across.WeightsOf(area.New.Left + x);
            gathered[x] = start >= to || start + weights.Length <= from ? 0 : AddPairs(row.AsSpan(start, weights.Length), weights);
        }
    }

    /// <summary>The weighted sum, from both ends to the middle: the same in either direction.</summary>
    private static float AddPairs(ReadOnlySpan<float> samples, ReadOnlySpan<float> weights)
    {
        var sum = 0f;
        var (i, j) = (0, weights.Length - 1);
        for (; i < j; i++, j--) sum += (samples[i] * weights[i]) + (samples[j] * weights[j]);
        return i == j ? sum + (samples[i] * weights[i]) : sum;
    }

    /// <summary>A new row on its way, still as wide as the old ones.</summary>
    private sealed class Sum(int channels, int width)
    {
        public float[][] Channels { get; } = [.. Enumerable.Range(0, channels).Select(_ => new float[width])];

        public int From { get; private set; } = int.MaxValue;

        public int To { get; private set; }

        public void Add(float[][] samples, float weight, int from, int to, int padding)
        {
            for (var channel = 0; channel < samples.Length; channel++) Add(samples[channel].AsSpan(from, to - from), weight, Channels[channel].AsSpan(from + padding, to - from));
            From = Math.Min(From, from + padding);
            To = Math.Max(To, to + padding);
        }

        public void Clear()
        {
            if (From >= To) return;
            foreach (var channel in Channels) channel.AsSpan(From, To - From).Clear();
            (From, To) = (int.MaxValue, 0);
        }

        private static void Add(ReadOnlySpan<float> samples, float weight, Span<float> sum)
        {
            var wide = MemoryMarshal.Cast<float, Vector<float>>(samples);
            var wideSum = MemoryMarshal.Cast<float, Vector<float>>(sum);
            for (var i = 0; i < wide.Length; i++) wideSum[i] += wide[i] * weight;
            for (var i = wide.Length * Vector<float>.Count; i < samples.Length; i++) sum[i] += samples[i] * weight;
        }
    }
}
