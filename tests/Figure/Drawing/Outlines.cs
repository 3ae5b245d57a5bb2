using System.Globalization;
using SkiaSharp;

namespace LayerTools.Figure.Drawing;

/// <summary>
/// Smooth shapes through listed points. Coordinates are figure px: x counts from the centre line, to the right in the picture, y from the top edge.
/// A point ending in '!' is a corner.
/// </summary>
internal static class Outlines
{
    private const int StepsPerSegment = 14;

    /// <summary>A closed shape through the points.</summary>
    public static SKPath Closed(string points) => Trace(Parse(points), close: true);

    /// <summary>A closed shape from its right half, listed from the top of the centre line to its bottom.</summary>
    public static SKPath Symmetric(string half)
    {
        var right = Parse(half);
        var left = right.AsEnumerable().Reverse().Where(knot => knot.At.X > 0).Select(knot => knot with { At = new SKPoint(-knot.At.X, knot.At.Y) });
        return Trace([.. right, .. left], close: true);
    }

    /// <summary>A band along a line, whose widths are spread evenly from its first point to its last: locks of hair, straps, tapered pen strokes.</summary>
    public static SKPath Ribbon(string spine, params float[] widths)
    {
        var line = Sample(Parse(spine), close: false);
        var left = new List<SKPoint>();
        var right = new List<SKPoint>();
        for (var i = 0; i < line.Count; i++)
        {
            var ahead = line[Math.Min(i + 1, line.Count - 1)];
            var behind = line[Math.Max(i - 1, 0)];
            var (dx, dy) = (ahead.X - behind.X, ahead.Y - behind.Y);
            var half = WidthAt(widths, (float)i / (line.Count - 1)) / 2;
            var scale = half / Math.Max(MathF.Sqrt(dx * dx + dy * dy), 0.001f);
            left.Add(new SKPoint(line[i].X + dy * scale, line[i].Y - dx * scale));
            right.Add(new SKPoint(line[i].X - dy * scale, line[i].Y + dx * scale));
        }

        right.Reverse();
        return Join([.. left, .. right]);
    }

    /// <summary>A limb from joint to joint with round ends.</summary>
    public static SKPath Limb(float x0, float y0, float width0, float x1, float y1, float width1)
    {
        var (dx, dy) = (x1 - x0, y1 - y0);
        var turn = MathF.Atan2(dy, dx);
        List<SKPoint> points = [];
        for (var i = 0; i <= 24; i++) points.Add(OnCircle(x0, y0, width0 / 2, turn + MathF.PI / 2 + MathF.PI * i / 24));
        for (var i = 0; i <= 24; i++) points.Add(OnCircle(x1, y1, width1 / 2, turn - MathF.PI / 2 + MathF.PI * i / 24));
        return Join(points);
    }

    /// <summary>An ellipse, possibly turned (degrees, clockwise).</summary>
    public static SKPath Oval(float x, float y, float radiusX, float radiusY, float turn = 0)
    {
        List<SKPoint> points = [];
        var (sine, cosine) = MathF.SinCos(turn * MathF.PI / 180);
        for (var i = 0; i < 96; i++)
        {
            var (s, c) = MathF.SinCos(MathF.Tau * i / 96);
            points.Add(new SKPoint(x + radiusX * c * cosine - radiusY * s * sine, y + radiusX * c * sine + radiusY * s * cosine));
        }

        return Join(points);
    }

    /// <summary>The shape's reflection across the centre line.</summary>
    public static SKPath Mirror(SKPath path)
    {
        var mirrored = new SKPath();
        path.Transform(SKMatrix.CreateScale(-1, 1), mirrored);
        return mirrored;
    }

    private static SKPoint OnCircle(float x, float y, float radius, float angle) => new(x + radius * MathF.Cos(angle), y + radius * MathF.Sin(angle));

    private static float WidthAt(float[] widths, float place)
    {
        var position = place * (widths.Length - 1);
        var index = Math.Min((int)position, widths.Length - 2);
        // A cosine step has no kink where two widths meet.
        var part = (1 - MathF.Cos(MathF.PI * (position - index))) / 2;
        return widths[index] + (widths[index + 1] - widths[index]) * part;
    }

    private static List<Knot> Parse(string points) =>
        [.. points.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(text =>
        {
            var numbers = text.TrimEnd('!').Split(',');
            return new Knot(new SKPoint(float.Parse(numbers[0], CultureInfo.InvariantCulture), float.Parse(numbers[1], CultureInfo.InvariantCulture)), text.EndsWith('!'));
        })];

    private static SKPath Trace(List<Knot> knots, bool close) => Join(Sample(knots, close));

    /// <summary>Points along a Catmull-Rom curve, whose tangents follow the neighbours of each knot.</summary>
    private static List<SKPoint> Sample(List<Knot> knots, bool close)
    {
        List<SKPoint> samples = [];
        var count = knots.Count;
        for (var i = 0; i < (close ? count : count - 1); i++)
        {
            var (from, to) = (knots[i], knots[(i + 1) % count]);
            var before = knots[close ? (i + count - 1) % count : Math.Max(i - 1, 0)].At;
            var after = knots[close ? (i + 2) % count : Math.Min(i + 2, count - 1)].At;
            var leave = from.IsCorner ? default : Half(before, to.At);
            var arrive = to.IsCorner ? default : Half(from.At, after);
            for (var step = 0; step < StepsPerSegment; step++) samples.Add(Hermite(from.At, leave, to.At, arrive, (float)step / StepsPerSegment));
        }

        if (!close) samples.Add(knots[^1].At);
        return samples;
    }

    private static SKPoint Half(SKPoint from, SKPoint to) => new((to.X - from.X) / 2, (to.Y - from.Y) / 2);

    private static SKPoint Hermite(SKPoint from, SKPoint leave, SKPoint to, SKPoint arrive, float t)
    {
        var (t2, t3) = (t * t, t * t * t);
        var (a, b, c, d) = (2 * t3 - 3 * t2 + 1, t3 - 2 * t2 + t, 3 * t2 - 2 * t3, t3 - t2);
        return new SKPoint(a * from.X + b * leave.X + c * to.X + d * arrive.X, a * from.Y + b * leave.Y + c * to.Y + d * arrive.Y);
    }

    private static SKPath Join(List<SKPoint> points)
    {
        using var builder = new SKPathBuilder();
        builder.AddPoly([.. points], true);
        return builder.Detach();
    }

    private readonly record struct Knot(SKPoint At, bool IsCorner);
}
