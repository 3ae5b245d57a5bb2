using LayerTools.Measures.Symmetry;
using LayerTools.Model;
using Xunit;

namespace LayerTools.Tests.Measures.Symmetry;

public sealed class TiltSearchTests
{
    /// <summary>What is promised.</summary>
    private const double Tolerance = 0.2;

    [Theory]
    [InlineData(0)]
    [InlineData(0.4)]
    [InlineData(3)]
    [InlineData(-3)]
    [InlineData(12.7)]
    [InlineData(-30)]
    [InlineData(44)]
    public void Turned_bodies_have_the_tilt_they_were_turned_by(double degrees) =>
        Assert.Equal(degrees, Find(Shape.Draw(new Bounds(0, 0, 300, 300), Shape.Body(150.3, 50).Turn(degrees, 150, 150)))!.Value, Tolerance);

    [Theory]
    [InlineData(2.5)]
    [InlineData(-17)]
    public void Large_ones_too(double degrees) =>
        Assert.Equal(degrees, Find(Shape.Draw(new Bounds(100, 50, 900, 850), Shape.Body(125, 25).Scale(4).Turn(degrees, 500, 450)))!.Value, Tolerance);

    [Theory]
    [InlineData(0)]
    [InlineData(-6)]
    public void An_arm_on_one_side_pulls_the_centre_but_not_the_tilt(double degrees)
    {
        Shape.Contains body = Shape.Body(150, 50), arm = Shape.Ellipse(235, 145, 12, 14);
        Assert.Equal(degrees, Find(Shape.Draw(new Bounds(0, 0, 300, 300), ((Shape.Contains)((x, y) => body(x, y) || arm(x, y) || Shape.Box(180, 80, 240, 95)(x, y))).Turn(degrees, 150, 150)))!.Value, 0.5);
    }

    [Theory]
    [InlineData(0, 60, 20)]
    [InlineData(10, 60, 20)]
    [InlineData(-25, 20, 60)]
    [InlineData(-8, 30, 26)]
    public void Ellipses_lean_as_the_nearer_of_their_two_axes_does(double degrees, double radiusX, double radiusY) =>
        Assert.Equal(degrees, Find(Shape.Draw(new Bounds(0, 0, 160, 160), Shape.Ellipse(80.2, 79.6, radiusX, radiusY).Turn(degrees, 80, 80)))!.Value, Tolerance);

    [Theory]
    [InlineData(0)]
    [InlineData(10)]
    [InlineData(-20)]
    public void Of_the_axes_of_a_square_the_most_upright_counts(double degrees) =>
        Assert.Equal(degrees, Find(Shape.Draw(new Bounds(0, 0, 160, 160), Shape.Box(40, 40, 120, 120).Turn(degrees, 80, 80)))!.Value, Tolerance);

    [Theory]
    [InlineData(40)]
    [InlineData(300)]
    public void Discs_have_no_tilt(int radius)
    {
        var tilt = Search(Shape.Alone(Shape.Draw(new Bounds(0, 0, (2 * radius) + 10, (2 * radius) + 10), Shape.Ellipse(radius + 5.2, radius + 4.7, radius, radius))));
        Assert.Null(tilt.Degrees);
        Assert.Contains("round", tilt.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void A_slanted_stroke_with_a_bar_at_each_end_agrees_with_no_reflection()
    {
        var tilt = Search(Shape.Alone(Shape.Draw(new Bounds(0, 0, 200, 200), (x, y) =>
            Shape.Box(30, 20, 170, 28)(x, y) || Shape.Box(30, 172, 170, 180)(x, y) || (y is > 20 and < 180 && Math.Abs(x - (190 - y)) < 12))));
        Assert.Null(tilt.Degrees);
        Assert.Contains("Less than half", tilt.Note, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1.5)]
    [InlineData(-14)]
    public void Pairs_lean_as_the_line_between_them_does(double degrees)
    {
        Shape.Contains left = (x, y) => Shape.Ellipse(80, 250, 40, 25)(x, y) && !Shape.Ellipse(95, 240, 18, 18)(x, y);
        var one = Shape.Draw(new Bounds(0, 0, 250, 500), left.Turn(degrees, 250, 250));
        var other = Shape.Draw(new Bounds(250, 0, 500, 500), left.Reflect(250).Turn(degrees, 250, 250));
        Assert.Equal(degrees, Search(new MirrorPair(one, other)).Degrees!.Value, Tolerance);
    }

    [Fact]
    public void Round_pairs_lean_too()
    {
        var one = Shape.Draw(new Bounds(0, 0, 100, 200), Shape.Ellipse(40, 90, 12, 12));
        var other = Shape.Draw(new Bounds(100, 0, 300, 200), Shape.Ellipse(240, 110, 12, 12));
        Assert.Equal(Math.Atan2(20, 200) * 180 / Math.PI, Search(new MirrorPair(one, other)).Degrees!.Value, Tolerance);
    }

    [Fact]
    public void A_pair_that_lies_one_above_the_other_has_no_tilt()
    {
        var one = Shape.Draw(new Bounds(0, 0, 100, 100), Shape.Ellipse(50, 40, 20, 12));
        var other = Shape.Draw(new Bounds(0, 100, 100, 200), Shape.Ellipse(52, 160, 20, 12));
        Assert.Contains("above", Search(new MirrorPair(one, other)).Note, StringComparison.Ordinal);
    }

    [Fact]
    public void A_dot_is_too_little() => Assert.Contains("Too little", Search(Shape.Alone(Shape.Draw(new Bounds(0, 0, 9, 9), Shape.Box(2, 2, 6, 6)))).Note, StringComparison.Ordinal);

    private static double? Find(CoveragePlane plane) => Search(Shape.Alone(plane)).Degrees;

    private static Tilt Search(MirrorPair pair)
    {
        var levels = new MirrorLevels(pair);
        return TiltSearch.Find(levels, AxisSearch.FindDoubled(levels, TestContext.Current.CancellationToken) ?? 0, TestContext.Current.CancellationToken);
    }
}
