using LayerTools.Model;

namespace LayerTools.Tests.Support;

/// <summary>
/// A part painted from rectangles and ellipses; later shapes replace what lies under them, alpha included, so that a shape of alpha 0 cuts a hole. Coordinates are
/// canvas px. <c>Painting.Of("Arm L").Rectangle(10, 20, 30, 40).Ellipse(15, 25, 10, 10, alpha: 3).ToLayer()</c>
/// </summary>
internal sealed class Painting
{
    private readonly string name;
    private readonly List<(Bounds Box, bool IsRound, byte Alpha, int Rgb)> shapes = [];
    private Bounds? bounds;

    private Painting(string name) => this.name = name;

    public static Painting Of(string name) => new(name);

    /// <param name="left">First column, canvas px.</param>
    /// <param name="top">First row.</param>
    /// <param name="width">Columns.</param>
    /// <param name="height">Rows.</param>
    /// <param name="alpha">0 to 255.</param>
    /// <param name="rgb">0xRRGGBB.</param>
    public Painting Rectangle(int left, int top, int width, int height, byte alpha = 255, int rgb = 0x806040) => Add(left, top, width, height, isRound: false, alpha, rgb);

    /// <summary>The pixels whose centres lie in an ellipse that fills the rectangle; parameters as for <see cref="Rectangle"/>.</summary>
    public Painting Ellipse(int left, int top, int width, int height, byte alpha = 255, int rgb = 0x806040) => Add(left, top, width, height, isRound: true, alpha, rgb);

    /// <summary>The rectangle that the layer stores; the union of all shapes where it is not given.</summary>
    public Painting Within(Bounds stored)
    {
        bounds = stored;
        return this;
    }

    /// <summary>The layer, for a model built by hand.</summary>
    public Layer ToLayer() => ToLayer(new StubLayerDetail());

    /// <summary>The layer, for a file that will be written.</summary>
    public Layer ToLayer(LayerFile file) => ToLayer(file.Detail.CreateLayerDetail(LayerKind.Pixel));

    private Layer ToLayer(LayerDetail detail)
    {
        var area = bounds ?? shapes.Aggregate(Bounds.Empty, (all, shape) => all.Union(shape.Box));
        var channels = Enumerable.Range(0, 4).Select(_ => new byte[area.Width * area.Height]).ToArray();
        foreach (var shape in shapes) Fill(shape, area, channels);
        var layer = new Layer(LayerKind.Pixel, name, detail) { Bounds = area };
        for (var i = 0; i < channels.Length; i++) layer.Planes.Add(ModelBuilder.Raw((PlaneRole)(i - 1), channels[i]));
        return layer;
    }

    private Painting Add(int left, int top, int width, int height, bool isRound, byte alpha, int rgb)
    {
        shapes.Add((Bounds.FromSize(left, top, width, height), isRound, alpha, rgb));
        return this;
    }

    private static void Fill((Bounds Box, bool IsRound, byte Alpha, int Rgb) shape, Bounds area, byte[][] channels)
    {
        var part = shape.Box.Intersect(area);
        for (var y = part.Top; y < part.Bottom; y++)
        {
            for (var x = part.Left; x < part.Right; x++)
            {
                if (shape.IsRound && !IsInside(shape.Box, x, y)) continue;
                var index = ((y - area.Top) * area.Width) + x - area.Left;
                (channels[0][index], channels[1][index]) = (shape.Alpha, (byte)(shape.Rgb >> 16));
                (channels[2][index], channels[3][index]) = ((byte)(shape.Rgb >> 8), (byte)shape.Rgb);
            }
        }
    }

    private static bool IsInside(Bounds box, int x, int y)
    {
        var right = ((2 * (x - box.Left)) + 1 - box.Width) / (double)box.Width;
        var down = ((2 * (y - box.Top)) + 1 - box.Height) / (double)box.Height;
        return (right * right) + (down * down) <= 1;
    }
}
