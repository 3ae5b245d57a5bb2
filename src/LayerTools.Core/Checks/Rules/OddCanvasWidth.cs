using LayerTools.Model;

namespace LayerTools.Checks.Rules;

/// <summary>A canvas of odd width: its centre line runs through the middle of a column, so that no part can be reflected onto itself.</summary>
internal sealed class OddCanvasWidth : CheckRule
{
    public override string Id => nameof(OddCanvasWidth);

    public override string Title => "The canvas width is odd";

    public override string Reason => "The centre line of a symmetrical figure lies between two columns, so the width has to be even (common practice).";

    public override Severity DefaultSeverity => Severity.Error;

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        if (!context.Profile.Canvas.EvenWidth || context.File.Width % 2 == 0) yield break;
        var width = context.File.Width;
        var even = width < CanvasLimits.LongestSide(context.File.Format) ? width + 1 : width - 1;
        yield return Find(context, "The canvas has an odd number of columns.", Remedy.Edit(context.File, FormattableString.Invariant($"Set-LayerCanvas -Width {even}")),
            FormattableString.Invariant($"{width} px"), "an even number of px");
    }
}
