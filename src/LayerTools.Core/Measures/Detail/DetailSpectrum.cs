using FftSharp;

namespace LayerTools.Measures.Detail;

/// <summary>
/// The power spectrum of a part along its rows and columns, over short segments that cross an edge. Whatever enlarges a picture works along rows and columns one
/// after the other, so that their spectra show it undiluted, which a spectrum by distance from the centre would not.
/// </summary>
internal sealed class DetailSpectrum
{
    /// <summary>Samples of a segment, px.</summary>
    public const int SegmentLength = 128;

    /// <summary>The least step between neighbours that counts as an edge, levels of 255.</summary>
    private const float Edge = 24;

    private const int MostSegments = 4000;

    /// <summary>How far the spectrum of edges has to fall off, dB.</summary>
    private const double Drop = 7;

    /// <summary>How far it has to stay down beyond, dB; what comes up again are the images of an enlargement, or a pattern.</summary>
    private const double Rebound = 4;

    private const int FirstBin = 4;
    private const int LastReferenceBin = 12;

    private DetailSpectrum(double[] power, int segments)
    {
        Power = power;
        Segments = segments;
    }

    /// <summary>Mean power; the i-th at i / <see cref="SegmentLength"/> cycles per px, up to the sampling limit of half a cycle.</summary>
    public IReadOnlyList<double> Power { get; }

    /// <summary>Segments that cross an edge.</summary>
    public int Segments { get; }

    public static DetailSpectrum Measure(LumaPlane plane, LumaPlane transposed, CancellationToken cancellation)
    {
        var places = FindEdges(plane).Select(place => (plane, place)).Concat(FindEdges(transposed).Select(place => (transposed, place))).ToList();
        var step = Math.Max(1, places.Count / MostSegments);
        var window = HannWindow.Create(SegmentLength);
        var power = new double[(SegmentLength / 2) + 1];
        var used = 0;
        for (var i = 0; i < places.Count; i += step, used++)
        {
            cancellation.ThrowIfCancellationRequested();
            Add(places[i].Item1, places[i].place, window, power);
        }

        for (var i = 0; i < power.Length; i++) power[i] /= Math.Max(1, used);
        return new DetailSpectrum(power, used);
    }

    /// <summary>
    /// The frequency where detail ends, cycles per px, at most the sampling limit of 0.5. Edges have a power that goes with 1/f²; times f² it is level as far as
    /// there is detail. The end is where it lies 7 dB below the level that it has at coarse detail, and does not come up again.
    /// </summary>
    public double FindCutoff()
    {
        var level = Enumerable.Range(0, Power.Count).Select(i => 10 * Math.Log10((Power[i] * Math.Max(1, i * i)) + 1e-9)).ToArray();
        var smooth = Enumerable.Range(0, level.Length).Select(i => Enumerable.Range(i - 2, 5).Average(j => level[Math.Min(Math.Max(j, 0), level.Length - 1)])).ToArray();
        var reference = smooth.Skip(FirstBin).Take(LastReferenceBin - FirstBin + 1).Average();
        for (var i = FirstBin * 2; i < smooth.Length; i++)
        {
            if (smooth[i] < reference - Drop && smooth.Skip(i).Max() < reference - Rebound) return i / (double)SegmentLength;
        }

        return 0.5;
    }

    /// <summary>Where every other row crosses an edge, in segments that overlap by half.</summary>
    private static IEnumerable<(int Start, int Row)> FindEdges(LumaPlane plane)
    {
        for (var start = 0; start + SegmentLength <= plane.Width; start += SegmentLength / 2)
        {
            var isOdd = false;
            for (var y = 0; y < plane.Height; y++)
            {
                if (!HasEdge(plane, start, y)) continue;
                isOdd = !isOdd;
                if (isOdd) yield return (start, y);
            }
        }
    }

    private static bool HasEdge(LumaPlane plane, int start, int y)
    {
        for (var x = start + 1; x < start + SegmentLength; x++)
        {
            if (Math.Abs(plane[x, y] - plane[x - 1, y]) > Edge) return true;
        }

        return false;
    }

    private static void Add(LumaPlane plane, (int Start, int Row) place, double[] window, double[] power)
    {
        double sum = 0, weights = 0, energy = 0;
        for (var i = 0; i < SegmentLength; i++)
        {
            sum += plane[place.Start + i, place.Row] * window[i];
            weights += window[i];
            energy += window[i] * window[i];
        }

        var mean = sum / weights;
        var samples = new double[SegmentLength];
        for (var i = 0; i < SegmentLength; i++) samples[i] = (plane[place.Start + i, place.Row] - mean) * window[i];
        var spectrum = FFT.Forward(samples);
        for (var i = 0; i < power.Length; i++)
        {
            var size = spectrum[i].Magnitude;
            power[i] += size * size / energy;
        }
    }
}
