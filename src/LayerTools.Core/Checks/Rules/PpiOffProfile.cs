namespace LayerTools.Checks.Rules;

/// <summary>A resolution other than the profile's.</summary>
internal sealed class PpiOffProfile : CheckRule
{
    // Files keep the resolution in steps of 1/65536; what is shown to two places may differ by more.
    private const double Tolerance = 0.01;

    public override string Id => nameof(PpiOffProfile);

    public override string Title => "The resolution is not the profile's";

    public override string Reason => "The resolution changes no pixel, but sizes of brushes, text and print go by it; asked where the profile names pixels per inch.";

    public override Severity DefaultSeverity => Severity.Warning;

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Profile.Canvas.Ppi is not { } wanted || (context.File.Ppi is { } ppi && Math.Abs(ppi - wanted) <= Tolerance)) yield break;
        yield return Find(context, "The resolution is not what the profile says.",
            FormattableString.Invariant($"Set the resolution to {wanted:0.##} pixels per inch in the painting program, without resampling."),
            context.File.Ppi is { } found ? FormattableString.Invariant($"{found:0.##} ppi") : "not said", FormattableString.Invariant($"{wanted:0.##} ppi"));
    }
}
