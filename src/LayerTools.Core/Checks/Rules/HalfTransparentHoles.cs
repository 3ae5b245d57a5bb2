namespace LayerTools.Checks.Rules;

/// <summary>Spots in a filled area that show what lies behind.</summary>
internal sealed class HalfTransparentHoles : PartRule
{
    public override string Id => nameof(HalfTransparentHoles);

    public override string Title => "A filled area has half-transparent spots";

    public override string Reason => "When the part moves, what lies behind shines through. A spot is a region of alpha 8 to 229 that pixels of 230 and more enclose on all sides; soft edges and the rims of openings are none. Spots smaller than the limit are let through: small gaps look like that along smooth edges.";

    public override double? DefaultLimit => 16;

    public override string LimitUnit => "px²";

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        var limit = LimitFor(context);
        foreach (var part in PartsOf(context))
        {
            var holes = part.Holes.TakeWhile(hole => hole.Area >= limit).ToList();
            if (holes.Count == 0) continue;
            var places = Places(holes, holes.Count);
            yield return Find(
                context,
                part.Layer,
                $"The filled area has {Count(holes.Count, "half-transparent spot", "half-transparent spots")}, at {places}.",
                $"Fill the part where the file was made: {places}.",
                FormattableString.Invariant($"{holes[0].Area} px² the largest"),
                FormattableString.Invariant($"less than {limit:0.##} px²"));
        }
    }
}
