using LayerTools.Measures.Detail;

namespace LayerTools.Checks.Rules;

/// <summary>A face or a bust that shows pixels when it fills the screen.</summary>
internal sealed class TooLittleDetail : CheckRule
{
    /// <summary>A limit of 0 would ask for a canvas without end.</summary>
    private const double SmallestLimit = 0.01;

    public override string Id => nameof(TooLittleDetail);

    public override string Title => "The art has too little detail for the screen";

    public override string Reason =>
        "One screen is the yardstick for detail (common practice): when bust or face fill the first screen of the profile, a canvas pixel must not be larger than a screen pixel. "
        + "Measured is screen pixels per canvas pixel, the smaller of screen width / width and screen height / height.";

    public override Severity DefaultSeverity => Severity.Warning;

    public override double? DefaultLimit => 1;

    public override string? LimitUnit => "screen px per canvas px";

    public override bool NeedsPixels => true;

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Profile.Screens is not [var screen, ..]) yield break;
        var limit = Math.Max(SmallestLimit, LimitFor(context));
        var framings = new FigureFramings(context.Survey, context.NameOf);
        foreach (var kind in new[] { FramingKind.Bust, FramingKind.Face })
        {
            if (framings.Find(kind) is not { } box) continue;
            var fit = new ScreenFit(box, screen);
            if (fit.Ratio <= limit) continue;
            var (width, height) = fit.FindCanvas(context.File.Width, context.File.Height, limit);
            yield return Find(context, FormattableString.Invariant($"The {kind.ToString().ToLowerInvariant()} shows its pixels when it fills a screen of {screen.Width} x {screen.Height} px."),
                FormattableString.Invariant($"Draw it anew on a canvas of at least {width} x {height} px, or keep the camera farther away; enlarging adds no detail."),
                FormattableString.Invariant($"{fit.Ratio:0.##} {LimitUnit}"), FormattableString.Invariant($"{limit:0.##} {LimitUnit}"));
        }
    }
}
