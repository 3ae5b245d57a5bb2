using LayerTools.Model;

namespace LayerTools.Checks.Rules;

/// <summary>A left and a right part that are alike, but not at the same place on both sides.</summary>
internal sealed class PairDiffersInPlace : PartRule
{
    public override string Id => nameof(PairDiffersInPlace);

    public override string Title => "Left and right are not at the same place";

    public override string Reason => "A part that was nudged is hard to see and hard to rig. Asked of pairs whose boxes have the same size to 2 %, since others are in a pose; measured as how far the reflected box of one lies from the other's, across the figure's own centre line where its parts agree on one. Farther than half its own size a part was moved on purpose.";

    public override double? DefaultLimit => 2;

    public override string LimitUnit => "px";

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        var limit = LimitFor(context);
        var doubledAxis = 2 * (context.FigureAxis ?? context.File.Axis);
        foreach (var pair in context.Pairs.Where(pair => pair.HasSameBox).OrderBy(pair => pair.Front.Layer.LayerNumber))
        {
            var (front, other) = pair.Front == pair.Left ? (pair.Left.Seen, pair.Right.Seen) : (pair.Right.Seen, pair.Left.Seen);
            var right = MiddleX(front) - (doubledAxis - MiddleX(other));
            var down = MiddleY(front) - MiddleY(other);
            var distance = Math.Sqrt((right * right) + (down * down));
            if (distance <= limit || Math.Abs(right) > front.Width / 2.0 || Math.Abs(down) > front.Height / 2.0) continue;
            yield return Find(
                context,
                pair.Front.Layer,
                FormattableString.Invariant($"It lies {distance:0.#} px from where the reflection of {(pair.Front == pair.Left ? pair.Right : pair.Left).Layer.LayerPath} would be: {right:+0.#;-0.#;0} px across, {down:+0.#;-0.#;0} px down."),
                Reflection.Advise(pair),
                FormattableString.Invariant($"{distance:0.#} px"),
                FormattableString.Invariant($"{limit:0.##} px"));
        }
    }

    private static double MiddleX(Bounds box) => (box.Left + (double)box.Right) / 2;

    private static double MiddleY(Bounds box) => (box.Top + (double)box.Bottom) / 2;
}
