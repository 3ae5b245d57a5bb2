using LayerTools.Model;
using LayerTools.Pixels.Compositing.Fills;

namespace LayerTools.Pixels.Compositing.Masks;

/// <summary>
/// Fills a path with soft edges: each row of pixels is cut at <see cref="LinesPerRow"/> heights, and along each the exact lengths inside are added up.
/// Inside one shape overlaps are holes (even-odd). Shapes are joined in order by their operations, beginning with nothing, or with everything if the first
/// subtracts or intersects (observed in files, whose stored pixels agree).
/// </summary>
internal sealed class PathFill
{
    private const int LinesPerRow = 64;
    private readonly List<PathShape> shapes = [];
    private readonly bool beginsFilled;
    private readonly bool isInverted;

    /// <param name="path">The path.</param>
    /// <param name="canvasWidth">Columns of the canvas, px, which the path's fractions refer to.</param>
    /// <param name="canvasHeight">Rows of the canvas, px.</param>
    public PathFill(VectorPath path, int canvasWidth, int canvasHeight)
    {
        isInverted = path.IsInverted;
        beginsFilled = path.Outlines.Count == 0 ? path.IsFilledWhenEmpty : path.Outlines[0].Operation is PathOperation.Subtract or PathOperation.Intersect;
        foreach (var outline in path.Outlines)
        {
            if (outline.Operation is { } operation || shapes.Count == 0) shapes.Add(new PathShape(outline.Operation ?? PathOperation.Unite));
            shapes[shapes.Count - 1].Add(outline, canvasWidth, canvasHeight);
        }

        // Where nothing crosses a row, all of it is the same: what lies beyond all outlines.
        Outside = shapes.Aggregate(beginsFilled, (inside, shape) => PathShape.Join(inside, false, shape.Operation)) == isInverted ? 0f : 1f;
        Bounds = shapes.Aggregate(Bounds.Empty, (all, shape) => all.Union(shape.Bounds));
        Box = shapes.Aggregate((FillBox?)null, (all, shape) => all is { } some && shape.Box is { } one ? some.Union(one) : all ?? shape.Box);
    }

    /// <summary>Outside this rectangle, canvas px, every pixel is covered by <see cref="Outside"/>.</summary>
    public Bounds Bounds { get; }

    /// <summary>The rectangle that the outlines reach, canvas px: what a gradient is fitted into. Null without outlines.</summary>
    public FillBox? Box { get; }

    /// <summary>0 or 1.</summary>
    public float Outside { get; }

    /// <summary>How much of each pixel is inside, 0 to 1.</summary>
    /// <param name="y">The canvas row.</param>
    /// <param name="x">The canvas column of the first pixel.</param>
    /// <param name="coverage">One value for each pixel.</param>
    public void Fill(int y, int x, Span<float> coverage)
    {
        coverage.Fill(Outside);
        if (y < Bounds.Top || y >= Bounds.Bottom) return;
        coverage.Clear();
        var crossings = new List<PathCrossing>();
        for (var line = 0; line < LinesPerRow; line++)
        {
            crossings.Clear();
            for (var i = 0; i < shapes.Count; i++) shapes[i].FindCrossings(y + ((line + 0.5) / LinesPerRow), i, crossings);
            crossings.Sort((one, other) => one.X.CompareTo(other.X));
            AddLine(crossings, x, coverage);
        }

        for (var i = 0; i < coverage.Length; i++) coverage[i] = Math.Min(1f, coverage[i] / LinesPerRow);
    }

    private void AddLine(List<PathCrossing> crossings, int x, Span<float> coverage)
    {
        var states = shapes.Count <= 64 ? stackalloc bool[shapes.Count] : new bool[shapes.Count];
        var from = 0.0;
        foreach (var crossing in crossings)
        {
            var to = Math.Max(from, Math.Min(crossing.X - x, coverage.Length));
            if (IsInside(states)) Add(coverage, from, to);
            states[crossing.Shape] = !states[crossing.Shape];
            from = to;
        }

        if (IsInside(states)) Add(coverage, from, coverage.Length);
    }

    private bool IsInside(ReadOnlySpan<bool> states)
    {
        var inside = beginsFilled;
        for (var i = 0; i < states.Length; i++) inside = PathShape.Join(inside, states[i], shapes[i].Operation);
        return inside != isInverted;
    }

    private static void Add(Span<float> coverage, double from, double to)
    {
        if (to <= from) return;
        var first = (int)from;
        var last = (int)to;
        if (first == last)
        {
            coverage[first] += (float)(to - from);
            return;
        }

        coverage[first] += (float)(first + 1 - from);
        for (var i = first + 1; i < last; i++) coverage[i] += 1f;
        if (last < coverage.Length) coverage[last] += (float)(to - last);
    }
}
