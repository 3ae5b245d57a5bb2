namespace LayerTools.Checks.Rules;

/// <summary>A file without a guide on its centre line.</summary>
internal sealed class NoCenterGuide : CheckRule
{
    public override string Id => nameof(NoCenterGuide);

    public override string Title => "There is no guide on the centre line";

    public override string Reason => "A vertical guide on the centre line shows everybody who paints on where the figure's middle is (common practice). A guide that is close by is left to GuideOffAxis.";

    public override Severity DefaultSeverity => Severity.Note;

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        var file = context.File;
        var nearest = CheckRules.Find(nameof(GuideOffAxis))!.LimitIn(context.Profile);
        if (file.Guides.Any(guide => guide.IsVertical && guide.Position == file.Axis) || GuideOffAxis.FindGuide(file, nearest) is not null) yield break;
        yield return Find(context, "No vertical guide lies on the centre line.", Remedy.Repair(context, Id), limit: FormattableString.Invariant($"x = {file.Axis} px"));
    }
}
