using LayerTools.Model;
using LayerTools.Pixels.Compositing.Effects;
using Xunit;

namespace LayerTools.Tests.Pixels.Compositing.Effects;

public sealed class ShapeGrowthTests
{
    private const int Width = 23;
    private const int Height = 700;

    /// <summary>Tall shapes are grown in pieces; each row must come out as if it had been grown with its surroundings alone.</summary>
    [Theory]
    [InlineData(0.4)]
    [InlineData(3)]
    [InlineData(7.5)]
    [InlineData(90)]
    [InlineData(1000)]
    public void A_tall_shape_grows_as_its_parts_do(double distance)
    {
        var shape = Scatter();
        var grown = ShapeGrowth.Grow(shape, distance);
        var around = (int)Math.Ceiling(distance) + 20;
        for (var y = 0; y < Height; y += 9)
        {
            var part = Cut(shape, Math.Max(0, y - around), Math.Min(Height, y + around));
            var grownPart = ShapeGrowth.Grow(part, distance);
            for (var x = 0; x < Width; x++) Assert.Equal(grownPart.Get(x, y), grown.Get(x, y));
        }
    }

    [Fact]
    public void One_pixel_reaches_as_far_as_the_distance_across_the_pieces()
    {
        var shape = new ShapePlane(new Bounds(0, 0, 3, Height));
        shape.Samples[(300 * 3) + 1] = ShapePlane.Full;

        var grown = ShapeGrowth.Grow(shape, 200);

        Assert.Equal([0, ShapePlane.Full, ShapePlane.Full, ShapePlane.Full, 0], new[] { 99, 100, 300, 500, 501 }.Select(y => grown.Get(1, y)));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void No_distance_leaves_the_shape_itself(double distance)
    {
        var shape = Scatter();

        Assert.Same(shape, ShapeGrowth.Grow(shape, distance));
    }

    private static ShapePlane Scatter()
    {
        var random = new Random(7);
        var shape = new ShapePlane(new Bounds(0, 0, Width, Height));
        for (var i = 0; i < shape.Samples.Length; i++) shape.Samples[i] = (ushort)(random.Next(200) == 0 ? random.Next(1, ShapePlane.Full + 1) : 0);
        return shape;
    }

    private static ShapePlane Cut(ShapePlane shape, int top, int bottom)
    {
        var part = new ShapePlane(new Bounds(0, top, Width, bottom));
        shape.Samples.AsSpan(top * Width, part.Samples.Length).CopyTo(part.Samples);
        return part;
    }
}
