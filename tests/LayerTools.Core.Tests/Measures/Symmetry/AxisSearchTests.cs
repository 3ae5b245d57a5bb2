using LayerTools.Measures.Symmetry;
using LayerTools.Model;
using Xunit;

namespace LayerTools.Tests.Measures.Symmetry;

public sealed class AxisSearchTests
{
    /// <summary>What is promised.</summary>
    private const double Tolerance = 0.1;

    private static readonly CancellationToken None = TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(100.0)]
    [InlineData(100.5)]
    [InlineData(100.1)]
    [InlineData(100.25)]
    [InlineData(100.37)]
    [InlineData(99.81)]
    public void Ellipses_have_their_axis_at_their_centre_at_any_part_of_a_pixel(double centre)
    {
        Assert.Equal(centre, Find(Shape.Draw(new Bounds(40, 10, 170, 150), Shape.Ellipse(centre, 77.3, 44.2, 61.7))), Tolerance / 2);
        Assert.Equal(centre, Find(Shape.Draw(new Bounds(85, 70, 120, 90), Shape.Ellipse(centre, 80, 9, 6))), Tolerance / 2);
    }

    [Theory]
    [InlineData(20, 81)]
    [InlineData(20, 80)]
    [InlineData(-37, 512)]
    public void Boxes_of_whole_pixels_have_their_axis_half_way(int left, int right)
    {
        var plane = new CoveragePlane(new Bounds(left, 3, right, 40));
        Array.Fill(plane.Values, byte.MaxValue);
        Assert.Equal((left + right) / 2.0, Find(plane), 1e-9);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.3)]
    [InlineData(0.5)]
    [InlineData(0.7)]
    public void Upright_soft_edges_are_found_too(double part) =>
        Assert.Equal(60.5 + part, Find(Shape.Draw(new Bounds(0, 0, 140, 40), Shape.Box(20.5 + part, 2, 100.5 + part, 38))), Tolerance / 2);

    [Fact]
    public void Figures_with_a_gap_in_the_middle_are_followed_from_small_to_full_size() =>
        Assert.Equal(613.2, Find(Shape.Draw(new Bounds(200, 0, 1024, 900), Shape.Body(306.6, 20).Scale(2))), Tolerance / 2);

    [Theory]
    [InlineData(250.0)]
    [InlineData(249.5)]
    [InlineData(251.2)]
    public void Pairs_have_their_axis_between_them(double axis)
    {
        Shape.Contains left = (x, y) => Shape.Ellipse(100.3, 60, 50, 30)(x, y) && !Shape.Ellipse(120, 50, 20, 20)(x, y);
        var one = Shape.Draw(new Bounds(30, 10, 170, 110), left);
        var other = Shape.Draw(new Bounds(300, 20, 480, 100), left.Reflect(axis));
        Assert.Equal(axis, AxisSearch.FindDoubled(new MirrorLevels(new MirrorPair(one, other)), None)!.Value / 2, Tolerance / 2);
    }

    [Fact]
    public void What_lies_at_other_heights_meets_across_no_axis()
    {
        var one = Shape.Draw(new Bounds(0, 0, 20, 20), Shape.Box(2, 2, 18, 18));
        var other = Shape.Draw(new Bounds(60, 40, 80, 60), Shape.Box(62, 42, 78, 58));
        Assert.Null(AxisSearch.FindDoubled(new MirrorLevels(new MirrorPair(one, other)), None));
    }

    [Fact]
    public void The_best_axis_is_the_best_of_all_whole_and_half_pixels()
    {
        // Of an uneven shape: a tail on one side.
        Shape.Contains body = Shape.Body(90, 10);
        var plane = Shape.Draw(new Bounds(0, 0, 220, 230), (x, y) => body(x, y) || Shape.Box(100, 150, 210, 165)(x, y));
        var pair = Shape.Alone(plane);
        var best = Enumerable.Range(pair.FirstAxis, pair.LastAxis - pair.FirstAxis + 1).MaxBy(pair.SumProducts);
        Assert.Equal(best / 2.0, Find(plane), 0.5);
    }

    private static double Find(CoveragePlane plane) => AxisSearch.FindDoubled(new MirrorLevels(Shape.Alone(plane)), None)!.Value / 2;
}
