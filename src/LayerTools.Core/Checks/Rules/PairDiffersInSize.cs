namespace LayerTools.Checks.Rules;

/// <summary>A left and a right part of different size.</summary>
internal sealed class PairDiffersInSize : PartRule
{
    /// <summary>Soft edges make small parts differ by this much, px.</summary>
    private const double SoftEdge = 1;

    public override string Id => nameof(PairDiffersInSize);

    public override string Title => "Left and right differ in size";

    public override string Reason => "A part that was drawn larger than its opposite looks wrong as soon as both move alike. Measured as how much smaller the square root of the smaller part's painted area is, so that turned parts of a pose still match; differences up to 1 px are let through.";

    public override double? DefaultLimit => 5;

    public override string LimitUnit => "%";

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        var limit = LimitFor(context);
        foreach (var pair in context.Pairs.OrderBy(pair => pair.Front.Layer.LayerNumber))
        {
            var (left, right) = (Math.Sqrt(pair.Left.PaintedArea - pair.Left.FaintArea), Math.Sqrt(pair.Right.PaintedArea - pair.Right.FaintArea));
            var (small, large) = (Math.Min(left, right), Math.Max(left, right));
            var percent = 100 * (1 - (small / large));
            if (percent <= limit || large - small <= SoftEdge) continue;
            var front = pair.Front;
            var other = front == pair.Left ? pair.Right : pair.Left;
            yield return Find(
                context,
                front.Layer,
                FormattableString.Invariant($"It is {percent:0.#} % {((front == pair.Left) == (left > right) ? "larger" : "smaller")} than its opposite {other.Layer.LayerPath}: {front.Seen.Width} x {front.Seen.Height} px and {other.Seen.Width} x {other.Seen.Height} px."),
                Reflection.Advise(pair),
                FormattableString.Invariant($"{percent:0.#} %"),
                FormattableString.Invariant($"{limit:0.##} %"));
        }
    }
}
