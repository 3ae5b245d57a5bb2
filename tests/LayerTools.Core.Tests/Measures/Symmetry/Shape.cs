using LayerTools.Measures.Symmetry;
using LayerTools.Model;

namespace LayerTools.Tests.Measures.Symmetry;

/// <summary>Invented shapes with known axes, drawn with soft edges: each pixel takes 8 × 8 samples.</summary>
internal static class Shape
{
    private const int Samples = 8;

    /// <summary>Whether a point, canvas px, is in the shape.</summary>
    public delegate bool Contains(double x, double y);

    public static CoveragePlane Draw(Bounds bounds, Contains contains)
    {
        var plane = new CoveragePlane(bounds);
        for (var y = bounds.Top; y < bounds.Bottom; y++)
        {
            var row = plane.Row(y);
            for (var x = 0; x < row.Length; x++) row[x] = Cover(bounds.Left + x, y, contains);
        }

        return plane;
    }

    public static Contains Ellipse(double centreX, double centreY, double radiusX, double radiusY) =>
        (x, y) => Square((x - centreX) / radiusX) + Square((y - centreY) / radiusY) <= 1;

    public static Contains Box(double left, double top, double right, double bottom) => (x, y) => x >= left && x < right && y >= top && y < bottom;

    /// <summary>A body seen from the front: trunk, head, and two legs with a gap between them; 200 px high.</summary>
    public static Contains Body(double axis, double top)
    {
        var head = Ellipse(axis, top + 30, 22, 30);
        var trunk = Ellipse(axis, top + 95, 38, 45);
        return (x, y) => head(x, y) || trunk(x, y) || (y >= top + 120 && y < top + 200 && Math.Abs(x - axis) is > 6 and < 30);
    }

    /// <summary>The shape turned about a point; above 0 clockwise as seen, so that the top goes to the right.</summary>
    public static Contains Turn(this Contains shape, double degrees, double aboutX, double aboutY)
    {
        var (sine, cosine) = Math.SinCos(degrees * Math.PI / 180);
        return (x, y) => shape(aboutX + ((x - aboutX) * cosine) + ((y - aboutY) * sine), aboutY - ((x - aboutX) * sine) + ((y - aboutY) * cosine));
    }

    /// <summary>The shape reflected across an upright line.</summary>
    public static Contains Reflect(this Contains shape, double axis) => (x, y) => shape((2 * axis) - x, y);

    /// <summary>The shape as many times larger.</summary>
    public static Contains Scale(this Contains shape, double factor) => (x, y) => shape(x / factor, y / factor);

    public static MirrorPair Alone(CoveragePlane plane) => new(plane, plane);

    private static byte Cover(int left, int top, Contains contains)
    {
        var inside = 0;
        for (var i = 0; i < Samples * Samples; i++)
        {
            if (contains(left + (((i % Samples) + 0.5) / Samples), top + (((i / Samples) + 0.5) / Samples))) inside++;
        }

        return (byte)Math.Round(inside * 255.0 / (Samples * Samples));
    }

    private static double Square(double value) => value * value;
}
