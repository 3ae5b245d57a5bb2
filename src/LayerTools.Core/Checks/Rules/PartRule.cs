using LayerTools.Measures.Survey;

namespace LayerTools.Checks.Rules;

/// <summary>A question that the pixels of the parts answer.</summary>
internal abstract class PartRule : CheckRule
{
    /// <summary>How many places a finding names.</summary>
    private const int MostPlaces = 3;

    public override Severity DefaultSeverity => Severity.Warning;

    public override bool NeedsPixels => true;

    /// <summary>The parts of the figure: neither sketches, guides and backdrops nor fills.</summary>
    protected static IEnumerable<PartSurvey> PartsOf(CheckContext context) => context.Survey.Parts.Where(part => part.IsPart);

    /// <summary>Where to look for regions: the first few of them.</summary>
    protected static string Places(IReadOnlyList<PartRegion> regions, int count)
    {
        var named = string.Join(", ", regions.Take(MostPlaces).Select(region => FormattableString.Invariant($"x {region.Box.Left} y {region.Box.Top}")));
        return count > MostPlaces ? FormattableString.Invariant($"{named} and {count - MostPlaces} more") : named;
    }

    /// <summary>A number with its noun.</summary>
    protected static string Count(int count, string one, string many) => FormattableString.Invariant($"{count} {(count == 1 ? one : many)}");
}
