using System.Globalization;
using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>
/// Changes a file's canvas and moves everything on it by whole pixels: pixels, masks, paths and guides together, nothing resampled and nothing cut off.
/// Without a shift the canvas grows or shrinks at its right and bottom edges. The chosen layers do not matter.
/// </summary>
public sealed class CanvasEdit : LayerEdit
{
    private const string Edit = "Changing the canvas";

    // Guides are kept in 1/32 px as signed 32-bit numbers (PSD File Formats Specification, 'Grid and guides resource format').
    private const double FarthestGuide = int.MaxValue / 32;

    /// <summary>Columns, px; null leaves them.</summary>
    public int? Width { get; init; }

    /// <summary>Rows, px; null leaves them.</summary>
    public int? Height { get; init; }

    /// <summary>How far everything moves, px: to the right and down. Not together with <see cref="CenterOn"/>.</summary>
    public (int Right, int Down)? Shift { get; init; }

    /// <summary>The x, px, a multiple of 0.5, of the line that comes to lie on the new centre line; null for none.</summary>
    public double? CenterOn { get; init; }

    /// <inheritdoc/>
    public override EditPlan Plan(LayerFile file, IReadOnlyList<Layer> layers)
    {
        if (Shift is not null && CenterOn is not null) throw new InvalidOperationException("Give a shift or a line to centre on, not both.");
        var (width, height) = (Width ?? file.Width, Height ?? file.Height);
        CheckSize(file, width, height);
        var (right, down) = CenterOn is { } x ? (FindShift(file, x, width), 0) : Shift ?? (0, 0);
        CheckReach(file, right, down);

        var steps = new List<EditStep>();
        AddStep(steps, nameof(Width), Text(file.Width), Text(width));
        AddStep(steps, nameof(Height), Text(file.Height), Text(height));
        AddStep(steps, nameof(Shift), "0, 0", $"{Text(right)}, {Text(down)}");
        return new EditPlan(file, steps, changesPicture: true, () => Apply(file, width, height, right, down)) { Warnings = [.. FindWarnings(file, width, height, right, down)] };
    }

    private static void CheckSize(LayerFile file, int width, int height)
    {
        var most = CanvasLimits.LongestSide(file.Format);
        var refusal = new Refusal(file, Edit);
        foreach (var (side, size) in new[] { ("width", width), ("height", height) })
        {
            if (size >= 1 && size <= most) continue;
            refusal.Add(FormattableString.Invariant($"a {side} of {size} px is outside of 1 to {most} px, the format's range"), file.Format == FileFormat.Psd
                ? "Choose a size in this range; PSB holds up to 300000 px a side." : "Choose a size in this range.");
        }

        refusal.ThrowIfAny();
    }

    private static int FindShift(LayerFile file, double x, int width)
    {
        var doubled = 2 * x;
        if (doubled != Math.Floor(doubled) || Math.Abs(doubled) > int.MaxValue)
        {
            throw Refusal.Create(file, Edit, FormattableString.Invariant($"{x} is no multiple of 0.5 px, so that whole pixels cannot centre it"), "Give the line to half a pixel.");
        }

        var doubledShift = width - (long)doubled;
        if (doubledShift % 2 != 0)
        {
            var reachable = new[] { width + 1, width - 1 }.Where(other => other >= 1 && other <= CanvasLimits.LongestSide(file.Format)).Select(Text);
            throw Refusal.Create(file, Edit,
                FormattableString.Invariant($"x = {x} cannot become the centre line of a canvas {width} px wide by whole pixels, since it would have to move by {doubledShift / 2.0} px"),
                $"Give a width of {string.Join(" or ", reachable)} px as well.");
        }

        return (int)(doubledShift / 2);
    }

    private static void CheckReach(LayerFile file, int right, int down)
    {
        var refusal = new Refusal(file, Edit);
        const string Remedy = "Choose a smaller shift.";
        foreach (var layer in file.GetLayers())
        {
            var areas = new[] { layer.Bounds, layer.Mask?.Bounds ?? Bounds.Empty, layer.Mask?.PaintedBounds ?? Bounds.Empty };
            if (!areas.All(area => CanShift(area, right, down))) refusal.Add($"'{layer.LayerPath}' would leave the range of coordinates", Remedy);
        }

        foreach (var guide in file.Guides)
        {
            if (Math.Abs(guide.Position + (guide.IsVertical ? right : down)) > FarthestGuide) refusal.Add($"the guide {guide} would leave the range of coordinates", Remedy);
        }

        refusal.ThrowIfAny();
    }

    private static bool CanShift(Bounds area, int right, int down) => area.IsEmpty
        || (Math.Abs((long)area.Left + right) <= CanvasLimits.Farthest && Math.Abs((long)area.Top + down) <= CanvasLimits.Farthest);

    /// <summary>An area without pixels has no place and stays as it is, so that files do not change more than they must.</summary>
    private static Bounds Move(Bounds area, int right, int down) => area.IsEmpty ? area : area.Shift(right, down);

    private static void Apply(LayerFile file, int width, int height, int right, int down)
    {
        foreach (var layer in file.GetLayers())
        {
            layer.Bounds = Move(layer.Bounds, right, down);
            if (layer.Mask is { } mask)
            {
                mask.Bounds = Move(mask.Bounds, right, down);
                if (mask.PaintedBounds is { } painted) mask.PaintedBounds = Move(painted, right, down);
            }

            layer.Detail.Recanvas(right, down, file.Width, file.Height, width, height);
        }

        file.Detail.Recanvas(right, down, file.Width, file.Height, width, height);
        file.Guides = file.Guides.Select(guide => guide with { Position = guide.Position + (guide.IsVertical ? right : down) }).ToList();
        (file.Width, file.Height) = (width, height);
    }

    private static IEnumerable<string> FindWarnings(LayerFile file, int width, int height, int right, int down)
    {
        if (width % 2 != 0) yield return FormattableString.Invariant($"The width is odd ({width} px): no pixel edge is the centre line.");
        var (before, after) = (new Bounds(0, 0, file.Width, file.Height), new Bounds(0, 0, width, height));
        var outside = file.GetLayers()
            .Where(layer => !layer.IsGroup && layer.Bounds.Intersect(before) == layer.Bounds)
            .Where(layer => Move(layer.Bounds, right, down) is var moved && moved.Intersect(after) != moved).ToList();
        var live = file.GetLayers().Where(layer => layer.Kind is LayerKind.Text or LayerKind.Placed && (right, down) != (0, 0)).ToList();
        if (live.Count > 0) yield return $"Live text and placed content move with their pixels only; a program that renders them anew may put them back: {QuotedPaths.Join(live)}.";
        if (outside.Count > 0) yield return $"These layers now reach beyond the canvas; their pixels are kept: {QuotedPaths.Join(outside)}.";
    }

    private static void AddStep(List<EditStep> steps, string property, string old, string @new)
    {
        if (old != @new) steps.Add(new EditStep(null, property, old, @new));
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
