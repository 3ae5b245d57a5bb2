using LayerTools.Model;

namespace LayerTools.Checks.Rules;

/// <summary>A centre guide that misses the centre line.</summary>
internal sealed class GuideOffAxis : CheckRule
{
    public override string Id => nameof(GuideOffAxis);

    public override string Title => "The centre guide is not on the centre line";

    public override string Reason =>
        "Whoever paints along the guide paints off the line that parts are reflected on. Asked of the vertical guide nearest to the centre line, if none lies on it and it is no farther than the limit, in per cent of the width (common practice: the centre line is half the width).";

    public override Severity DefaultSeverity => Severity.Warning;

    public override double? DefaultLimit => 1;

    public override string LimitUnit => "%";

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        if (FindGuide(context.File, LimitFor(context)) is not { } guide) yield break;
        yield return Find(context, "The centre guide is close to the centre line, but not on it.", Remedy.Repair(context, Id),
            FormattableString.Invariant($"x = {guide.Position:0.###} px"), FormattableString.Invariant($"x = {context.File.Axis} px"));
    }

    /// <summary>The guide that is meant to be the centre guide, and is not; null if there is none.</summary>
    /// <param name="file">The file.</param>
    /// <param name="limit">How far it may be from the centre line, per cent of the width.</param>
    internal static Guide? FindGuide(LayerFile file, double limit)
    {
        var near = file.Guides.Where(guide => guide.IsVertical && Distance(file, guide) <= file.Width * limit / 100).OrderBy(guide => Distance(file, guide)).ToList();
        return near.Count == 0 || Distance(file, near[0]) == 0 ? null : near[0];
    }

    private static double Distance(LayerFile file, Guide guide) => Math.Abs(guide.Position - file.Axis);
}
