using System.Numerics;
using System.Runtime.InteropServices;
using LayerTools.Pixels.Compositing;

namespace LayerTools.Pixels.Resampling;

/// <summary>
/// Resamples colours together with their opacity, row by row: colours are premultiplied before and divided after, so that what is transparent lends no colour. They are mixed in the
/// file's own encoding, in which layers are blended too; so the soft edge of a smaller part lies on its neighbour as the smaller picture shows it.
/// </summary>
internal sealed class ColorResampler
{
    private readonly ScaledArea area;
    private readonly int bitDepth;
    private readonly IReadOnlyList<RowInput> colors;
    private readonly RowInput? alpha;
    private readonly IReadOnlyList<RowOutput> colorOutputs;
    private readonly RowOutput? alphaOutput;
    private readonly float leastAlpha;
    private readonly byte[] output;
    private float brightest = 1;

    /// <param name="area">From where to where.</param>
    /// <param name="bitDepth">8, 16 or 32.</param>
    /// <param name="colors">Rows of the colour channels.</param>
    /// <param name="alpha">Rows of opacity; null for opaque pixels.</param>
    /// <param name="colorOutputs">Where each colour channel's new rows go.</param>
    /// <param name="alphaOutput">Where rows of opacity go, if wanted.</param>
    public ColorResampler(ScaledArea area, int bitDepth, IReadOnlyList<RowInput> colors, RowInput? alpha, IReadOnlyList<RowOutput> colorOutputs, RowOutput? alphaOutput)
    {
        this.area = area;
        this.bitDepth = bitDepth;
        this.colors = colors;
        this.alpha = alpha;
        this.colorOutputs = colorOutputs;
        this.alphaOutput = alphaOutput;
        // What is stored as transparent gets no colour, since it is none that anybody sees.
        leastAlpha = bitDepth switch { 8 => 0.5f / byte.MaxValue, 16 => 0.5f / ushort.MaxValue, _ => float.Epsilon };
        output = new byte[PlaneRows.GetRowBytes(area.New.Width, bitDepth)];
    }

    /// <summary>Reads all rows and hands on all new ones.</summary>
    public void Run(CancellationToken cancellation)
    {
        var stored = new byte[PlaneRows.GetRowBytes(area.Old.Width, bitDepth)];
        var samples = new float[colors.Count + 1][];
        for (var channel = 0; channel < samples.Length; channel++) samples[channel] = new float[area.Old.Width];
        if (alpha is null) samples[0].AsSpan().Fill(1);
        var rows = new RowResampler(area, samples.Length, Take);
        for (var y = 0; y < area.Old.Height; y++)
        {
            cancellation.ThrowIfCancellationRequested();
            rows.Add(samples, Read(stored, samples, out var to), to);
        }
    }

    /// <summary>Reads a row; outside of the columns that are told nothing is painted.</summary>
    private int Read(byte[] stored, float[][] samples, out int to)
    {
        var size = bitDepth / 8;
        var from = 0;
        to = area.Old.Width;
        if (alpha is not null)
        {
            alpha(stored);
            (from, to) = PaintedSpan.Find(stored, size);
            Samples.Decode(stored.AsSpan(from * size, (to - from) * size), bitDepth, samples[0].AsSpan(from, to - from));
        }

        for (var i = 0; i < colors.Count; i++)
        {
            colors[i](stored);
            var color = samples[i + 1].AsSpan(from, to - from);
            Samples.Decode(stored.AsSpan(from * size, (to - from) * size), bitDepth, color);
            if (bitDepth == 32) foreach (var sample in color) brightest = Math.Max(brightest, sample);
            if (alpha is not null) Multiply(color, samples[0].AsSpan(from, to - from));
        }

        return from;
    }

    private static void Multiply(Span<float> colors, ReadOnlySpan<float> alpha)
    {
        var wide = MemoryMarshal.Cast<float, Vector<float>>(colors);
        var wideAlpha = MemoryMarshal.Cast<float, Vector<float>>(alpha);
        for (var i = 0; i < wide.Length; i++) wide[i] *= wideAlpha[i];
        for (var i = wide.Length * Vector<float>.Count; i < colors.Length; i++) colors[i] *= alpha[i];
    }

    private void Take(int row, float[][] samples)
    {
        var coverage = samples[0];
        for (var channel = 1; channel < samples.Length; channel++)
        {
            var color = samples[channel];
            for (var x = 0; x < color.Length; x++) color[x] = coverage[x] >= leastAlpha ? Math.Max(0, Math.Min(brightest, color[x] / coverage[x])) : 0;
            Write(color, colorOutputs[channel - 1]);
        }

        if (alphaOutput is null) return;
        for (var x = 0; x < coverage.Length; x++) coverage[x] = Math.Max(0, Math.Min(1, coverage[x]));
        Write(coverage, alphaOutput);
    }

    private void Write(float[] samples, RowOutput to)
    {
        Samples.Encode(samples, bitDepth, output);
        to(output);
    }
}
