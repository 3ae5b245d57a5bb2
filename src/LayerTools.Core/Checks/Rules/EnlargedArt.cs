using LayerTools.Measures.Detail;

namespace LayerTools.Checks.Rules;

/// <summary>A part that was enlarged after it was drawn.</summary>
internal sealed class EnlargedArt : CheckRule
{
    public override string Id => nameof(EnlargedArt);

    public override string Title => "A part was enlarged after it was drawn";

    public override string Reason =>
        "Enlarged art has more pixels but no more detail, and looks soft beside the rest. Found where the spectrum falls off before the sampling limit and traces of resampling agree. "
        + "Off unless a profile asks for it, since it looks at all colours.";

    public override Severity DefaultSeverity => Severity.None;

    public override double? DefaultLimit => 1.2;

    public override string? LimitUnit => "times";

    public override bool NeedsPixels => true;

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        var limit = LimitFor(context);
        foreach (var part in DetailReader.FindEnlarged(context.File, context.Parts, context.Cancellation))
        {
            if (part.Factor is not { } factor || factor <= limit) continue;
            yield return Find(context, context.Parts.First(layer => layer.LayerNumber == part.LayerNumber),
                FormattableString.Invariant($"The part looks as if it was enlarged {factor:0.0#} times; that is {part.Certainty:P0} sure."),
                "Draw it anew at this size, or look at it with Measure-LayerDetail -Picture.",
                FormattableString.Invariant($"{factor:0.0#} times"), FormattableString.Invariant($"{limit:0.0#} times"));
        }
    }
}
