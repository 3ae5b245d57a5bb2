namespace LayerTools.Checks.Rules;

/// <summary>A canvas that is not as large as the profile says.</summary>
internal sealed class CanvasSizeOffProfile : CheckRule
{
    // Canvases whose sides differ by the same factor to so many px are one figure at two scales: sides are whole and even.
    private const double SameShape = 1;

    public override string Id => nameof(CanvasSizeOffProfile);

    public override string Title => "The canvas has not the size of the profile";

    public override string Reason => "Figures of one production share one canvas, so that parts and cameras fit from one to the other; asked where the profile names a width or a height.";

    public override Severity DefaultSeverity => Severity.Warning;

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        var (file, canvas) = (context.File, context.Profile.Canvas);
        var (width, height) = (canvas.Width ?? file.Width, canvas.Height ?? file.Height);
        if ((width, height) == (file.Width, file.Height)) yield break;

        var scale = (double)width / file.Width;
        var isSameShape = width != file.Width && width % 2 == 0 && Math.Abs(height - (file.Height * scale)) <= SameShape;
        var (message, remedy) = (isSameShape, scale) switch
        {
            (true, < 1) => ("The canvas is larger than the profile says. The command scales the figure down.", Remedy.Edit(file, FormattableString.Invariant($"Resize-LayerFile -Width {width}"))),
            (true, _) => ("The canvas is smaller than the profile says.",
                "Deliver the figure in its full size, since enlarging adds no detail. If it is a light version, check it with a profile of its own size: " +
                $"New-LayerProfile -FromFile {Quoted.Of(file.Path)}"),
            _ => ("The canvas is not as large as the profile says. The command keeps the scale of the figure.", Recut(context, width, height)),
        };
        yield return Find(context, message, remedy, FormattableString.Invariant($"{file.Width} x {file.Height} px"), FormattableString.Invariant($"{width} x {height} px"));
    }

    private static string Recut(CheckContext context, int width, int height)
    {
        // Whole pixels keep the figure centred only if the width changes by an even number.
        var centre = (width - context.File.Width) % 2 == 0 ? FormattableString.Invariant($" -CenterOn {context.File.Axis}") : string.Empty;
        return Remedy.Edit(context.File, FormattableString.Invariant($"Set-LayerCanvas -Width {width} -Height {height}{centre}"));
    }
}
