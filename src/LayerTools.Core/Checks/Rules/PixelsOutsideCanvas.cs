using LayerTools.Model;

namespace LayerTools.Checks.Rules;

/// <summary>Paint beyond the edges of the canvas.</summary>
internal sealed class PixelsOutsideCanvas : PartRule
{
    public override string Id => nameof(PixelsOutsideCanvas);

    public override string Title => "The part reaches beyond the canvas";

    public override string Reason => "What lies outside the canvas is not seen while painting and is cut off by much that reads the file. Measured as pixels with alpha above 0 outside the canvas; up to the limit they are let through.";

    public override double? DefaultLimit => 0;

    public override string LimitUnit => "px²";

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        var limit = LimitFor(context);
        return PartsOf(context).Where(part => part.OutsideArea > limit).Select(part => Find(
            context,
            part.Layer,
            $"The part reaches beyond the canvas {Describe(part.Painted, context.File)}.",
            Advise(context),
            FormattableString.Invariant($"{part.OutsideArea} px²"),
            FormattableString.Invariant($"{limit:0.##} px²")));
    }

    private static string Describe(Bounds box, LayerFile file)
    {
        (string Where, int Pixels)[] sides = [("at the left", -box.Left), ("at the top", -box.Top), ("at the right", box.Right - file.Width), ("at the bottom", box.Bottom - file.Height)];
        return string.Join(", ", sides.Where(side => side.Pixels > 0).Select(side => FormattableString.Invariant($"by {side.Pixels} px {side.Where}")));
    }

    /// <summary>All parts moved up or down where they fit; else a larger canvas with the same centre line, unless the profile or the format fixes its size.</summary>
    private static string Advise(CheckContext context)
    {
        var file = context.File;
        var box = PartsOf(context).Aggregate(Bounds.Empty, (all, part) => all.Union(part.Painted));
        var beside = (long)Math.Max(Math.Max(-(long)box.Left, box.Right - (long)file.Width), 0);
        var above = Math.Max(-(long)box.Top, 0);
        var (width, height) = (file.Width + (2 * beside), file.Height + above + Math.Max(box.Bottom - (long)file.Height, 0));
        if (beside == 0 && box.Height <= file.Height)
        {
            return Remedy.Edit(file, FormattableString.Invariant($"Set-LayerCanvas -Shift 0, {(box.Top < 0 ? -box.Top : file.Height - box.Bottom)}"));
        }

        var longest = CanvasLimits.LongestSide(file.Format);
        if (context.Profile.Canvas.Width is not null || context.Profile.Canvas.Height is not null || width > longest || height > longest)
        {
            return "Move the part onto the canvas, or erase what lies outside, where the file was made.";
        }

        return Remedy.Edit(file, FormattableString.Invariant($"Set-LayerCanvas -Width {width} -Height {height} -Shift {beside}, {above}"));
    }
}
