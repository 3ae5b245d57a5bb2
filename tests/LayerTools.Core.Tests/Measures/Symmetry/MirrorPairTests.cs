using CsCheck;
using LayerTools.Measures.Symmetry;
using LayerTools.Model;
using Xunit;

namespace LayerTools.Tests.Measures.Symmetry;

public sealed class MirrorPairTests
{
    private static readonly Gen<CoveragePlane> Planes = Gen.Select(Gen.Int[-40, 40], Gen.Int[-5, 5], Gen.Int[1, 130], Gen.Int[1, 9], Gen.Int[0, int.MaxValue], (left, top, width, height, seed) =>
    {
        var plane = new CoveragePlane(Bounds.FromSize(left, top, width, height));
        new Random(seed).NextBytes(plane.Values);
        return plane;
    });

    [Fact]
    public void Sums_are_those_of_a_look_at_each_pixel() => Gen.Select(Planes, Planes, Gen.Int[-200, 400]).Sample((one, other, axis) =>
    {
        var pair = new MirrorPair(one, other);
        var (products, minima) = (0L, 0L);
        for (var y = one.Bounds.Top; y < one.Bounds.Bottom; y++)
        {
            for (var x = one.Bounds.Left; x < one.Bounds.Right; x++)
            {
                var (a, b) = (At(one, x, y), At(other, axis - 1 - x, y));
                products += a * b;
                minima += Math.Min(a, b);
            }
        }

        Assert.Equal((products, minima), (pair.SumProducts(axis), pair.SumMinima(axis)));
    }, iter: 500);

    [Fact]
    public void Long_rows_do_not_overflow()
    {
        var plane = new CoveragePlane(new Bounds(0, 0, 300_000, 1));
        Array.Fill(plane.Values, byte.MaxValue);
        var pair = Shape.Alone(plane);
        Assert.Equal(300_000L * 255 * 255, pair.SumProducts(300_000));
        Assert.Equal(300_000L * 255, pair.SumMinima(300_000));
    }

    [Fact]
    public void Halves_are_means_on_the_grid_of_the_canvas() => Planes.Sample(plane =>
    {
        var half = plane.Halve();
        for (var y = half.Bounds.Top; y < half.Bounds.Bottom; y++)
        {
            for (var x = half.Bounds.Left; x < half.Bounds.Right; x++)
            {
                var sum = At(plane, 2 * x, 2 * y) + At(plane, (2 * x) + 1, 2 * y) + At(plane, 2 * x, (2 * y) + 1) + At(plane, (2 * x) + 1, (2 * y) + 1);
                Assert.Equal((sum + 2) / 4, At(half, x, y));
            }
        }

        // Nothing was left out at the edges.
        Assert.Equal(plane.Sum() / 4, half.Sum(), half.Bounds.Area);
    }, iter: 200);

    private static int At(CoveragePlane plane, int x, int y) =>
        x >= plane.Bounds.Left && x < plane.Bounds.Right && y >= plane.Bounds.Top && y < plane.Bounds.Bottom ? plane.Row(y)[x - plane.Bounds.Left] : 0;
}
