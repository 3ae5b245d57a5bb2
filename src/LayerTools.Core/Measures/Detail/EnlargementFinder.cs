using LayerTools.Pixels;

namespace LayerTools.Measures.Detail;

/// <summary>
/// Finds art that was enlarged. Two things have to agree: the spectrum falls off well before the sampling limit (<see cref="DetailSpectrum"/>), and the period of the
/// traces that resampling leaves (<see cref="ResamplingTraces"/>) says the same factor. So neither soft brushes, which have no traces, nor patterns, whose
/// spectrum does not fall off, nor the blocks of JPEG are taken for it.
/// </summary>
internal static class EnlargementFinder
{
    /// <summary>Smallest factor that is told, since less is next to nothing.</summary>
    public const double SmallestFactor = 1.2;

    /// <summary>Largest factor that is told; beyond, traces lie among the detail of the figure.</summary>
    public const double LargestFactor = 5.3;

    private const int SmallestSide = 64;
    private const int LargestSide = 4096;
    private const int FewestSegments = 100;

    /// <summary>Measured on invented figures: drawn, blurred and JPEG-packed art stays below 5 but for the grid of JPEG; enlarged art with edges lies above 6.</summary>
    private const double LeastTrace = 5.5;

    private const double CertainTrace = 15;

    /// <summary>Measured with bilinear, bicubic and Lanczos: the end of detail × the factor is 0.30 to 0.52 cycles per px; 0.40 is in the middle of the logarithms.</summary>
    private const double EndTimesFactor = 0.4;

    /// <summary>How far the factors by spectrum and by traces may lie apart, as a natural logarithm.</summary>
    private const double MostApart = 0.42;

    /// <summary>Detail that ends below this share of the sampling limit is soft.</summary>
    private const double SoftEnd = 0.7;

    private const int MostLines = 4;

    public static EnlargementEstimate Estimate(Raster picture, CancellationToken cancellation = default)
    {
        if (Math.Min(picture.Width, picture.Height) < SmallestSide || Math.Max(picture.Width, picture.Height) < DetailSpectrum.SegmentLength)
        {
            return new EnlargementEstimate(null, 0, null, FormattableString.Invariant(
                $"It is too small: {picture.Width} x {picture.Height} px, where {SmallestSide} x {DetailSpectrum.SegmentLength} px are needed."));
        }

        var plane = LumaPlane.Of(picture, LargestSide);
        var transposed = plane.Transpose();
        var spectrum = DetailSpectrum.Measure(plane, transposed, cancellation);
        if (spectrum.Segments < FewestSegments) return new EnlargementEstimate(null, 0, null, "It has too few edges: flat or soft art looks the same at any size.");
        cancellation.ThrowIfCancellationRequested();
        return Weigh(ResamplingTraces.Find(plane, transposed), spectrum.FindCutoff());
    }

    private static EnlargementEstimate Weigh(ResamplingTraces traces, double end)
    {
        var percent = 200 * end;
        var bySpectrum = EndTimesFactor / end;
        var isGrid = traces.GridStrength >= LeastTrace && traces.GridStrength > traces.Strongest / 2;
        var candidates = isGrid ? [] : traces.FindLines(LeastTrace, MostLines).SelectMany(ToFactors).ToList();
        if (candidates.Count > 0)
        {
            var factor = candidates.OrderBy(candidate => Distance(candidate, bySpectrum)).First();
            var apart = Distance(factor, bySpectrum);
            if (apart <= MostApart)
            {
                var certainty = (1 - (apart / MostApart / 2)) * Math.Min(1, 0.5 + ((traces.Strongest - LeastTrace) / (CertainTrace - LeastTrace) / 2));
                return new EnlargementEstimate(Math.Round(factor, 2), Math.Round(certainty, 2), percent, FormattableString.Invariant(
                    $"Detail ends at {percent:0} % of the sampling limit, and rows and columns repeat every {factor:0.0#} px as enlarging makes them."));
            }
        }

        if (end >= SoftEnd / 2)
        {
            var sure = isGrid || candidates.Count > 0 ? 0.6 : 0.9;
            return new EnlargementEstimate(1, sure, percent, FormattableString.Invariant($"Detail reaches {percent:0} % of the sampling limit."));
        }

        var reason = isGrid ? "but a grid of 8 px as of JPEG hides any other trace." : "but nothing shows that it was enlarged: a soft brush does the same.";
        return new EnlargementEstimate(null, 0, percent, FormattableString.Invariant($"Detail ends at {percent:0} % of the sampling limit, {reason}"));
    }

    /// <summary>What a period can come from: one sample of the smaller picture every 1 / f px, or the same seen from the other side of the sampling limit.</summary>
    private static IEnumerable<double> ToFactors(double frequency) => new[] { 1 / frequency, 1 / (1 - frequency) }.Where(factor => factor is >= SmallestFactor and <= LargestFactor);

    private static double Distance(double factor, double other) => Math.Abs(Math.Log(factor / other));
}
