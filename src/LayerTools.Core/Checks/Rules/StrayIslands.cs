using LayerTools.Measures.Survey;
using LayerTools.Model;

namespace LayerTools.Checks.Rules;

/// <summary>Specks that were left beside a part.</summary>
internal sealed class StrayIslands : PartRule
{
    /// <summary>An island larger than this share of the part's largest one is no speck, however small: the part may be all dots.</summary>
    private const double LargestShare = 0.01;

    /// <summary>Specks that have other paint this near belong to it: the ends of hairs come apart like that. px.</summary>
    private const int Near = 8;

    public override string Id => nameof(StrayIslands);

    public override string Title => "Specks lie apart from the part";

    public override string Reason => "A speck that was not erased moves with the part and makes its rectangle larger. Asked of islands of pixels above alpha 7 of up to the limit and of up to 1 % of the part's largest island, with no other paint of the part within 8 px; of a part in more than 100 pieces only the largest 100 are looked at.";

    public override double? DefaultLimit => 64;

    public override string LimitUnit => "px²";

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        var limit = LimitFor(context);
        foreach (var part in PartsOf(context).Where(part => part.IslandCount > 1))
        {
            var small = part.Islands.Where(island => island.Area <= limit && island.Area <= LargestShare * part.Islands[0].Area).ToList();
            var stray = small.Where(island => IsAlone(island, small, part)).ToList();
            if (stray.Count == 0) continue;
            var places = Places(stray, stray.Count);
            yield return Find(
                context,
                part.Layer,
                $"{Count(stray.Count, "speck lies", "specks lie")} apart from the rest, at {places}.",
                $"Erase the specks where the file was made: {places}.",
                FormattableString.Invariant($"{stray[0].Area} px² the largest"),
                FormattableString.Invariant($"pieces of more than {limit:0.##} px²"));
        }
    }

    /// <summary>Whether nothing but specks is near.</summary>
    private static bool IsAlone(PartRegion island, List<PartRegion> small, PartSurvey part)
    {
        var area = new Bounds(island.Box.Left - Near, island.Box.Top - Near, island.Box.Right + Near, island.Box.Bottom + Near).Intersect(part.Coverage.Bounds);
        var near = small.Where(other => !other.Box.Intersect(area).IsEmpty).ToList();
        for (var y = area.Top; y < area.Bottom; y++)
        {
            for (var x = area.Left; x < area.Right; x++)
            {
                if (part.Coverage[x, y] && !near.Exists(other => other.Box.Left <= x && x < other.Box.Right && other.Box.Top <= y && y < other.Box.Bottom)) return false;
            }
        }

        return true;
    }
}
