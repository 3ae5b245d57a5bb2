using LayerTools.Model;

namespace LayerTools.Checks.Rules;

/// <summary>A layer that stores clear pixels around its paint.</summary>
internal sealed class EmptyMargin : CheckRule
{
    public override string Id => nameof(EmptyMargin);

    public override string Title => "The layer stores clear pixels around its paint";

    public override string Reason =>
        "Clear margins cost memory and time in every program, and some take a layer's rectangle for its size. Measured as the clear part of the rectangle that the file stores, in per cent; asked of layers of pixels without masks.";

    public override Severity DefaultSeverity => Severity.Note;

    public override double? DefaultLimit => 50;

    public override string LimitUnit => "%";

    public override bool NeedsPixels => true;

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        var limit = LimitFor(context);
        foreach (var part in context.Survey.Parts)
        {
            if (part.Layer is not { Kind: LayerKind.Pixel, HasMask: false } layer || part.PaintedArea == 0) continue;
            var clear = 100.0 * (layer.Bounds.Area - part.Painted.Area) / layer.Bounds.Area;
            if (clear <= limit) continue;
            yield return Find(context, layer, FormattableString.Invariant($"Its rectangle is {layer.Bounds.Width} x {layer.Bounds.Height} px, its paint {part.Painted.Width} x {part.Painted.Height} px."),
                Remedy.Repair(context, Id), FormattableString.Invariant($"{clear:0.#} % clear"), FormattableString.Invariant($"{limit:0.##} %"));
        }
    }
}
