namespace LayerTools.Checks.Rules;

/// <summary>A canvas that is not as large as the profile says.</summary>
internal sealed class CanvasSizeOffProfile : CheckRule
{
    public override string Id => nameof(CanvasSizeOffProfile);

    public override string Title => "The canvas has not the size of the profile";

    public override string Reason => "Figures of one production share one canvas, so that parts and cameras fit from one to the other; asked where the profile names a width or a height.";

    public override Severity DefaultSeverity => Severity.Warning;

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        var (file, canvas) = (context.File, context.Profile.Canvas);
        var (width, height) = (canvas.Width ?? file.Width, canvas.Height ?? file.Height);
        if ((width, height) == (file.Width, file.Height)) yield break;

        // Whole pixels keep the figure centred only if the width changes by an even number.
        var centre = (width - file.Width) % 2 == 0 ? FormattableString.Invariant($" -CenterOn {file.Axis}") : string.Empty;
        yield return Find(context, "The canvas is not as large as the profile says. The command keeps the scale of the figure.",
            Remedy.Edit(file, FormattableString.Invariant($"Set-LayerCanvas -Width {width} -Height {height}{centre}")),
            FormattableString.Invariant($"{file.Width} x {file.Height} px"), FormattableString.Invariant($"{width} x {height} px"));
    }
}
