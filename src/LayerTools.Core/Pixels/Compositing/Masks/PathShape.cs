using LayerTools.Model;
using LayerTools.Pixels.Compositing.Fills;

namespace LayerTools.Pixels.Compositing.Masks;

/// <summary>Outlines that are filled together, as straight edges in canvas px.</summary>
internal sealed class PathShape(PathOperation operation)
{
    /// <summary>How far, in px, an edge may lie from its curve.</summary>
    private const double Flatness = 0.002;

    private const int MostSteps = 256;

    /// <summary>Coordinates are kept this near to the canvas, so that they stay whole numbers of pixels.</summary>
    private const double Farthest = 1 << 20;

    private readonly List<Edge> edges = [];
    private Bounds bounds = Bounds.Empty;

    public PathOperation Operation { get; } = operation;

    public Bounds Bounds => bounds;

    /// <summary>The rectangle that the outlines reach, canvas px; null without any.</summary>
    public FillBox? Box { get; private set; }

    public static bool Join(bool inside, bool insideShape, PathOperation operation) => operation switch
    {
        PathOperation.Exclude => inside != insideShape,
        PathOperation.Unite => inside || insideShape,
        PathOperation.Subtract => inside && !insideShape,
        _ => inside && insideShape,
    };

    public void Add(PathOutline outline, int width, int height)
    {
        var knots = outline.Knots;
        for (var i = 0; i < knots.Count; i++)
        {
            var from = knots[i];
            var to = knots[(i + 1) % knots.Count];
            if (i == knots.Count - 1 && !outline.IsClosed)
            {
                AddEdge(from.X * width, from.Y * height, to.X * width, to.Y * height);
                break;
            }

            AddCurve(from.X * width, from.Y * height, from.OutX * width, from.OutY * height, to.InX * width, to.InY * height, to.X * width, to.Y * height);
        }
    }

    public void FindCrossings(double y, int shape, List<PathCrossing> crossings)
    {
        foreach (var edge in edges)
        {
            if (y >= edge.Top && y < edge.Bottom) crossings.Add(new PathCrossing(edge.X + ((y - edge.Top) * edge.Slope), shape));
        }
    }

    private void AddCurve(double x0, double y0, double x1, double y1, double x2, double y2, double x3, double y3)
    {
        // A curve cut into n equal steps lies within |second difference| · 6 / (8 n²) of its chords.
        var bend = Math.Max(Distance(x0 - (2 * x1) + x2, y0 - (2 * y1) + y2), Distance(x1 - (2 * x2) + x3, y1 - (2 * y2) + y3));
        var steps = (int)Math.Max(1, Math.Min(MostSteps, Math.Ceiling(Math.Sqrt(0.75 * bend / Flatness))));
        var (fromX, fromY) = (x0, y0);
        for (var step = 1; step <= steps; step++)
        {
            var t = step / (double)steps;
            var (toX, toY) = step == steps ? (x3, y3) : (Evaluate(t, x0, x1, x2, x3), Evaluate(t, y0, y1, y2, y3));
            AddEdge(fromX, fromY, toX, toY);
            (fromX, fromY) = (toX, toY);
        }
    }

    private void AddEdge(double fromX, double fromY, double toX, double toY)
    {
        (fromX, fromY, toX, toY) = (Limit(fromX), Limit(fromY), Limit(toX), Limit(toY));
        bounds = bounds.Union(new Bounds((int)Math.Floor(Math.Min(fromX, toX)), (int)Math.Floor(Math.Min(fromY, toY)), (int)Math.Floor(Math.Max(fromX, toX)) + 1, (int)Math.Floor(Math.Max(fromY, toY)) + 1));
        var edge = new FillBox(Math.Min(fromX, toX), Math.Min(fromY, toY), Math.Max(fromX, toX), Math.Max(fromY, toY));
        Box = Box?.Union(edge) ?? edge;
        if (fromY == toY) return;
        var slope = (toX - fromX) / (toY - fromY);
        edges.Add(fromY < toY ? new Edge(fromY, toY, fromX, slope) : new Edge(toY, fromY, toX, slope));
    }

    private static double Evaluate(double t, double a, double b, double c, double d)
    {
        var u = 1 - t;
        return (u * u * u * a) + (3 * u * u * t * b) + (3 * u * t * t * c) + (t * t * t * d);
    }

    private static double Distance(double x, double y) => Math.Sqrt((x * x) + (y * y));

    private static double Limit(double value) => Math.Max(-Farthest, Math.Min(Farthest, value));

    /// <summary>A straight edge from its upper end, which belongs to it, to its lower one, which does not.</summary>
    private readonly record struct Edge(double Top, double Bottom, double X, double Slope);
}
