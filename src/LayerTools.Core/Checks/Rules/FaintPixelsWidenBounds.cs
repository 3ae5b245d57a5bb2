using LayerTools.Measures.Survey;

namespace LayerTools.Checks.Rules;

/// <summary>Pixels that nobody sees and that make a part's rectangle much larger.</summary>
internal sealed class FaintPixelsWidenBounds : PartRule
{
    /// <summary>A soft edge of small parts may be this wide, px.</summary>
    private const int SoftEdge = 8;

    public override string Id => nameof(FaintPixelsWidenBounds);

    public override string Title => "Nearly invisible pixels make the part larger";

    public override string Reason => "A part takes room in textures by the rectangle around its paint. Measured as how much larger the rectangle of all pixels above 0 is than that of the pixels above alpha 7, in per cent; soft brushes reach 45 %. Edges of up to 8 px are let through.";

    public override double? DefaultLimit => 50;

    public override string LimitUnit => "%";

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        var limit = LimitFor(context);
        return PartsOf(context).Where(part => Growth(part) > limit && Widening(part) > SoftEdge).Select(part => Find(
            context,
            part.Layer,
            FormattableString.Invariant($"Pixels of alpha 1 to {PartSurvey.Faint} widen its rectangle by up to {Widening(part)} px, to {part.Painted.Width} x {part.Painted.Height} px from {part.Seen.Width} x {part.Seen.Height} px."),
            Remedy.Repair(context, Id),
            FormattableString.Invariant($"{Growth(part):0.#} %"),
            FormattableString.Invariant($"{limit:0.##} %")));
    }

    /// <summary>How much larger a part's rectangle is for its faint pixels, in per cent; 0 for one that has nothing else.</summary>
    internal static double Growth(PartSurvey part) => part.IsEmpty ? 0 : 100.0 * (part.Painted.Area - part.Seen.Area) / part.Seen.Area;

    private static int Widening(PartSurvey part) => new[]
    {
        part.Seen.Left - part.Painted.Left,
        part.Seen.Top - part.Painted.Top,
        part.Painted.Right - part.Seen.Right,
        part.Painted.Bottom - part.Seen.Bottom,
    }.Max();
}
