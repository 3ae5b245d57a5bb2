using System.Globalization;
using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>
/// Makes a figure larger or smaller with its canvas: pixels, masks, paths, guides, sheets, slices, the sizes of effects and the frames of text and placed content.
/// <para>Both sides of the new canvas are even, so that the centre line stays at half the width between two columns (common practice); each direction is scaled by the ratio of new
/// to old size. So edges fall on edges and the centre line on the centre line, and what was symmetric to the pixel stays so.</para>
/// <para>Every part is resampled on the grid of the whole canvas, not on its own, so that parts keep fitting together. The chosen layers do not matter.</para>
/// </summary>
public sealed class ResizeEdit : LayerEdit
{
    private const string Edit = "Resizing";

    /// <summary>Twice the longest side a file can have, px: what one row of a part may take in memory.</summary>
    private const int LongestSide = 600_000;

    /// <summary>How large the result is, 1 to 400 % of what there is; exactly one of this, <see cref="Width"/> and <see cref="Height"/> is given.</summary>
    public double? Percent { get; init; }

    /// <summary>Columns of the new canvas, px; the height follows.</summary>
    public int? Width { get; init; }

    /// <summary>Rows of the new canvas, px; the width follows.</summary>
    public int? Height { get; init; }

    /// <summary>How new pixels are made; null for <see cref="ResampleFilter.Area"/> where the figure becomes smaller, else <see cref="ResampleFilter.CatmullRom"/>.</summary>
    public ResampleFilter? Filter { get; init; }

    /// <summary>Whether the resolution changes by the same factor, so that a print keeps its size in inches; otherwise it stays.</summary>
    public bool ScalesPpi { get; init; }

    /// <summary>Stops the work when the plan is applied; nothing has changed then.</summary>
    public CancellationToken Cancellation { get; init; }

    /// <inheritdoc/>
    public override EditPlan Plan(LayerFile file, IReadOnlyList<Layer> layers)
    {
        CheckColors(file);
        var scale = FindScale(file);
        CheckReach(file, scale);
        var filter = Filter ?? (scale.Mean < 1 ? ResampleFilter.Area : ResampleFilter.CatmullRom);
        if ((scale.NewWidth, scale.NewHeight) == (file.Width, file.Height)) return new EditPlan(file, [], changesPicture: false, () => { });

        var warnings = new List<string>();
        var details = Rescale(file, scale, warnings);
        var ppi = ScalesPpi && file.Ppi is { } old ? Math.Round(old * scale.Mean, 4) : file.Ppi;
        var steps = new List<EditStep>();
        AddStep(steps, nameof(file.Width), file.Width, scale.NewWidth);
        AddStep(steps, nameof(file.Height), file.Height, scale.NewHeight);
        if (ppi != file.Ppi) AddStep(steps, nameof(file.Ppi), file.Ppi!.Value, ppi!.Value);
        steps.Add(new EditStep(null, "Pixels", null, $"resampled with {filter}"));
        return new EditPlan(file, steps, changesPicture: true, () => Apply(file, scale, filter, details, ppi)) { Warnings = warnings };
    }

    private static void CheckColors(LayerFile file)
    {
        const string Remedy = "Turn the file to plain RGB first, with ConvertTo-RigFile or where it was made.";
        if (file.BitDepth == 1 || file.ColorMode == ColorMode.Bitmap) throw Refusal.Create(file, Edit, "its pixels are of 1 bit, black or white, and there is nothing between them", Remedy);
        if (file.ColorMode == ColorMode.Indexed) throw Refusal.Create(file, Edit, "its colours are numbers of a palette, which cannot be mixed", Remedy);
    }

    private CanvasScale FindScale(LayerFile file)
    {
        if (new object?[] { Percent, Width, Height }.Count(given => given is not null) != 1) throw new InvalidOperationException("Give a percentage, a width or a height.");
        if (Percent is { } percent && !(percent >= 1 && percent <= 400)) throw Refusal.Create(file, Edit, FormattableString.Invariant($"{percent} % is outside of 1 to 400 %"), "Choose a percentage in this range.");
        if (Percent == 100 || Width == file.Width || Height == file.Height) return new CanvasScale(file.Width, file.Height, file.Width, file.Height);
        foreach (var (side, size) in new[] { ("width", Width), ("height", Height) })
        {
            if (size is { } pixels && (pixels < 2 || pixels % 2 != 0)) throw Refusal.Create(file, Edit, FormattableString.Invariant($"a {side} of {pixels} px is not even"), FormattableString.Invariant($"Give {RoundToEven(pixels)} px."));
        }

        var factor = Percent / 100 ?? (Width is { } width ? width / (double)file.Width : Height!.Value / (double)file.Height);
        if (!(factor >= 0.01 && factor <= 4)) throw Refusal.Create(file, Edit, FormattableString.Invariant($"that would be {100 * factor:0.##} % of its size, outside of 1 to 400 %"), "Choose a size in this range.");
        var (newWidth, newHeight) = (Width ?? RoundToEven(file.Width * factor), Height ?? RoundToEven(file.Height * factor));
        var most = CanvasLimits.LongestSide(file.Format);
        if (newWidth > most || newHeight > most)
        {
            throw Refusal.Create(file, Edit, FormattableString.Invariant($"a canvas of {newWidth} x {newHeight} px is larger than {most} px a side, which is all that the format holds"), "Choose a smaller size.");
        }

        return new CanvasScale(file.Width, file.Height, (int)newWidth, (int)newHeight);
    }

    /// <summary>The nearest even number, the larger of two that are as near, so that nothing is made smaller than it was asked to be; at least 2.</summary>
    private static long RoundToEven(double size) => Math.Max(2, 2 * (long)Math.Floor((size / 2) + 0.5));

    private static void CheckReach(LayerFile file, CanvasScale scale)
    {
        var refusal = new Refusal(file, Edit);
        foreach (var layer in file.GetLayers())
        {
            foreach (var area in new[] { layer.Bounds, layer.Mask?.Bounds ?? Bounds.Empty, layer.Mask?.PaintedBounds ?? Bounds.Empty })
            {
                if (area.IsEmpty) continue;
                if ((long)area.Right - area.Left > LongestSide || (long)area.Bottom - area.Top > LongestSide) refusal.Add($"'{layer.LayerPath}' has a rectangle larger than any canvas can be", "Cut the layer where the file was made.");
                else if (scale.Map(area) is null) refusal.Add($"'{layer.LayerPath}' would leave the range of coordinates", "Choose a smaller size, or move the layer nearer to the canvas.");
            }
        }

        refusal.ThrowIfAny();
    }

    private static List<(Layer Layer, LayerDetail Detail)> Rescale(LayerFile file, CanvasScale scale, List<string> warnings)
    {
        var details = new List<(Layer, LayerDetail)>();
        var keeping = new List<(Layer Layer, string What)>();
        foreach (var layer in file.GetLayers())
        {
            var notes = new List<string>();
            details.Add((layer, layer.Detail.Rescale(scale, notes)));
            foreach (var note in notes.Distinct()) keeping.Add((layer, note));
        }

        foreach (var group in keeping.GroupBy(kept => kept.What, StringComparer.Ordinal))
        {
            warnings.Add($"What keeps its size beside its pixels, since it cannot be told in other pixels: {group.Key}, of {QuotedPaths.Join(group.Select(kept => kept.Layer))}. Bake it first with ConvertTo-RigFile if it has to fit.");
        }

        return details;
    }

    private void Apply(LayerFile file, CanvasScale scale, ResampleFilter filter, List<(Layer Layer, LayerDetail Detail)> details, double? ppi)
    {
        // All that can fail comes before the first change.
        var pixels = new ResizePixels(file, scale, filter, Cancellation);
        pixels.Resample();
        foreach (var (layer, detail) in details)
        {
            layer.Planes = [.. pixels.PlanesOf(layer)];
            layer.Bounds = scale.Map(layer.Bounds)!.Value;
            if (layer.Mask is { } mask) layer.Mask = Rescale(mask, scale);
            layer.Detail = detail;
        }

        file.Detail = pixels.FileDetail;
        file.Guides = [.. file.Guides.Select(guide => guide with { Position = Round(guide.IsVertical ? scale.MapX(guide.Position) : scale.MapY(guide.Position)) })];
        (file.Width, file.Height, file.Ppi) = (scale.NewWidth, scale.NewHeight, ppi);
    }

    private static LayerMask Rescale(LayerMask mask, CanvasScale scale) => mask with
    {
        Bounds = scale.Map(mask.Bounds)!.Value,
        PaintedBounds = mask.PaintedBounds is { } painted ? scale.Map(painted) : null,
        UserFeather = mask.UserFeather * scale.Mean,
        VectorFeather = mask.VectorFeather * scale.Mean,
    };

    /// <summary>Guides are kept in 1/32 px (PSD File Formats Specification, 'Grid and guides resource format').</summary>
    private static double Round(double position) => Math.Round(32 * position) / 32;

    private static void AddStep(List<EditStep> steps, string property, double old, double @new)
    {
        if (old != @new) steps.Add(new EditStep(null, property, old.ToString(CultureInfo.InvariantCulture), @new.ToString(CultureInfo.InvariantCulture)));
    }
}
