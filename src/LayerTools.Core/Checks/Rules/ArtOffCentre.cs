using LayerTools.Model;

namespace LayerTools.Checks.Rules;

/// <summary>A symmetrical figure that does not stand on the centre line.</summary>
internal sealed class ArtOffCentre : PartRule
{
    public override string Id => nameof(ArtOffCentre);

    public override string Title => "The figure is off the centre line";

    public override string Reason => "Parts are reflected across the middle of the canvas, and rigs are centred there (common practice). Measured from the middles between pairs of parts of the same size and the middles of symmetrical parts without a side, where at least three and a third of them agree.";

    public override Severity DefaultSeverity => Severity.Error;

    public override double? DefaultLimit => 1;

    public override string LimitUnit => "px";

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        var limit = LimitFor(context);
        if (context.FigureAxis is not { } axis || Math.Abs(axis - context.File.Axis) <= limit) yield break;
        var distance = axis - context.File.Axis;
        yield return Find(
            context,
            FormattableString.Invariant($"The figure stands {Math.Abs(distance):0.##} px too far to the {(distance < 0 ? "left" : "right")}: its centre line is at x = {axis:0.##} px."),
            Advise(context.File, distance),
            FormattableString.Invariant($"{distance:0.##} px"),
            FormattableString.Invariant($"{limit:0.##} px"));
    }

    private static string Advise(LayerFile file, double distance)
    {
        var shift = (int)-Math.Round(distance, MidpointRounding.AwayFromZero);
        return shift == 0
            ? "Less than a pixel cannot be moved without loss: move the figure where the file was made."
            : Remedy.Edit(file, FormattableString.Invariant($"Set-LayerCanvas -Shift {shift}, 0"));
    }
}
