using LayerTools.Model;
using LayerTools.Model.Fills;
using LayerTools.Pixels.Compositing;
using LayerTools.Pixels.Compositing.Fills;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Pixels.Compositing.Fills;

/// <summary>Fills of small rectangles, worked out by hand.</summary>
public sealed class FillPixelsTests
{
    private static readonly Gradient Ramp = new([new ColorStop(0, 0.5, Grey(0)), new ColorStop(1, 0.5, Grey(1))], [new OpacityStop(0, 0.5, 1f)], Smoothness: 0);

    /// <summary>The line of a box of 8 x 4 px: to the right it runs from column 0 to column 8, pixels counting by their left edge.</summary>
    [Theory]
    [InlineData(nameof(GradientForm.Linear), 0, 1, new[] { 0, 1, 2, 3, 4, 5, 6, 7 })]
    [InlineData(nameof(GradientForm.Linear), 180, 1, new[] { 8, 7, 6, 5, 4, 3, 2, 1 })]
    [InlineData(nameof(GradientForm.Linear), 0, 0.5, new[] { 0, 0, 0, 2, 4, 6, 8, 8 })]
    [InlineData(nameof(GradientForm.Mirrored), 0, 1, new[] { 8, 6, 4, 2, 0, 2, 4, 6 })]
    [InlineData(nameof(GradientForm.Radial), 0, 1, new[] { 8, 6, 4, 2, 0, 2, 4, 6 })]
    [InlineData(nameof(GradientForm.FourSided), 0, 1, new[] { 8, 6, 4, 2, 0, 2, 4, 6 })]
    [InlineData(nameof(GradientForm.Conic), 0, 1, new[] { 4, 4, 4, 4, 0, 0, 0, 0 })]
    public void A_gradient_runs_along_its_line(string form, double angle, double scale, int[] eighthsInMiddleRow)
    {
        var fill = Lay(Enum.Parse<GradientForm>(form), angle) with { Scale = scale };

        Assert.Equal(eighthsInMiddleRow.Select(eighth => eighth / 8f), Read(new GradientPixels(fill, new FillBox(0, 0, 8, 4), 1), y: 2, count: 8), (one, other) => Math.Abs(one - other) < 1e-5);
    }

    [Fact]
    public void Upward_is_against_the_rows()
    {
        var pixels = new GradientPixels(Lay(GradientForm.Linear, 90), new FillBox(0, 0, 4, 4), 1);

        Assert.Equal([1f, 0.75f, 0.5f, 0.25f], Enumerable.Range(0, 4).Select(y => Read(pixels, y, 1)[0]), (one, other) => Math.Abs(one - other) < 1e-5);
    }

    /// <summary>A quarter turn clockwise is a quarter of the gradient; corners of a square on its corner lie all on the end.</summary>
    [Fact]
    public void Forms_differ_off_their_line()
    {
        var box = new FillBox(0, 0, 8, 8);

        Assert.Equal(0.25f, At(GradientForm.Conic, 4, 7), 5);
        Assert.Equal(0.75f, At(GradientForm.Conic, 4, 1), 5);
        Assert.Equal(Math.Sqrt(8) / 4, At(GradientForm.Radial, 6, 6), 5);
        Assert.Equal(1f, At(GradientForm.FourSided, 6, 6), 5);
        Assert.Equal(0.5f, At(GradientForm.Mirrored, 6, 6), 5);

        float At(GradientForm form, int x, int y) => Read(new GradientPixels(Lay(form, 0), box, 1), y, 1, x)[0];
    }

    /// <summary>Ends are whole pixels: 30 degrees in a box of 22 x 22 from (4, 35) run from (4, 52) to (26, 39). Measured in a real file.</summary>
    [Fact]
    public void Ends_are_rounded_down_to_pixels()
    {
        var pixels = new GradientPixels(Lay(GradientForm.Linear, 30), new FillBox(4, 35, 26, 57), 1);

        Assert.Equal(0f, Read(pixels, 52, 1, 4)[0], 5);
        Assert.Equal(1f, Read(pixels, 39, 1, 26)[0], 5);
        Assert.Equal(22f * 22 / ((22 * 22) + (13 * 13)), Read(pixels, 52, 1, 26)[0], 4);
    }

    [Fact]
    public void Reversed_and_moved_gradients_run_from_elsewhere()
    {
        var box = new FillBox(0, 0, 8, 8);

        Assert.Equal(0.75f, Read(new GradientPixels(Lay(GradientForm.Linear, 0) with { IsReversed = true }, box, 1), 0, 1, 2)[0], 5);
        Assert.Equal(0f, Read(new GradientPixels(Lay(GradientForm.Linear, 0) with { RightShift = 0.25 }, box, 1), 0, 1, 2)[0], 5);
    }

    /// <summary>Cubic through 0 and 1 with slope 1/2 at both ends: at 1/4, -1/64 + 3/32 + 1/8 = 13/64. The mean is reached at the midpoint.</summary>
    [Theory]
    [InlineData(1, 0.5, 0.25, 13 / 64.0)]
    [InlineData(1, 0.5, 0.5, 0.5)]
    [InlineData(0, 0.5, 0.25, 0.25)]
    [InlineData(0.5, 0.5, 0.25, (0.25 + (13 / 64.0)) / 2)]
    [InlineData(0, 0.2, 0.2, 0.5)]
    [InlineData(0, 0.2, 0.6, 0.75)]
    [InlineData(1, 0.5, -1, 0)]
    [InlineData(1, 0.5, 2, 1)]
    public void Curve_through_two_stops(double smoothness, double midpoint, double at, double expected) =>
        Assert.Equal(expected, StopCurve.Evaluate([0, 1], [0.5, midpoint], [0, 1], smoothness, at), 5);

    [Fact]
    public void The_curve_never_leaves_the_two_stops_it_is_between()
    {
        double[] places = [0, 0.2, 0.4, 0.6, 0.8, 1];
        float[] values = [0.56f, 0.28f, 0.89f, 0.86f, 0.97f, 0.5f];
        for (var i = 0; i < 1000; i++)
        {
            var right = Math.Min(5, (i / 200) + 1);
            var value = StopCurve.Evaluate(places, [0.5, 0.5, 0.5, 0.5, 0.5, 0.5], values, 1, i / 1000.0);
            Assert.InRange(value, Math.Min(values[right - 1], values[right]) - 1e-6, Math.Max(values[right - 1], values[right]) + 1e-6);
        }
    }

    [Fact]
    public void Two_stops_at_one_place_make_an_edge()
    {
        Assert.Equal(0.5f, StopCurve.Evaluate([0, 0.5, 0.5, 1], [0.5, 0.5, 0.5, 0.5], [0.5f, 0.5f, 0, 0], 0, 0.499), 5);
        Assert.Equal(0f, StopCurve.Evaluate([0, 0.5, 0.5, 1], [0.5, 0.5, 0.5, 0.5], [0.5f, 0.5f, 0, 0], 0, 0.5), 5);
    }

    [Fact]
    public void A_pattern_repeats_from_its_place()
    {
        var pattern = new Pattern(2, 2, [[0, 1, 0.5f, 0.25f]], Alpha: null);

        Assert.Equal([1, 0, 1, 0], Read(new PatternPixels(pattern, new PatternFill("id", 1, 1, 0)), 0, 4));
        Assert.Equal([0.5f, 0.25f], Read(new PatternPixels(pattern, new PatternFill("id", 1, 0, 2)), -1, 2));
        Assert.Equal([0.25f, 0.25f, 0.75f, 0.75f], Read(new PatternPixels(new Pattern(2, 1, [[0, 1]], null), new PatternFill("id", 2, 0, 0)), 0, 4));
    }

    [Fact]
    public void A_layer_that_is_only_described_fills_the_canvas_and_keeps_to_its_mask()
    {
        var layer = new Layer(LayerKind.Fill, "Sky", new StubLayerDetail { Described = new ColorFill(Grey(0.2f)) }).Masked(new Bounds(1, 0, 3, 1), 255);

        Assert.Equal([255, 51, 51, 255], Picture.RenderGrey(Picture.Grey(4, 1, layer)));
        Assert.Empty(CompositorSupport.FindNotDrawn(Picture.Grey(4, 1, layer)));
    }

    [Fact]
    public void A_fill_that_cannot_be_drawn_is_listed_with_its_reason()
    {
        var unreadable = new Layer(LayerKind.Fill, "Sky", new StubLayerDetail { Described = new UndrawnFill("gradient of noise") });
        var lost = new Layer(LayerKind.Fill, "Cloth", new StubLayerDetail { Described = new PatternFill("gone", 1, 0, 0) });

        Assert.Equal(["Sky: gradient of noise", "Cloth: pattern that the file does not hold in a usable form"], CompositorSupport.FindNotDrawn(Picture.Grey(4, 1, unreadable, lost)));
    }

    private static FillColor Grey(float value) => new(value, value, value);

    private static GradientFill Lay(GradientForm form, double angle) => new(Ramp, form, angle, Scale: 1, IsReversed: false, IsAligned: true, RightShift: 0, DownShift: 0);

    private static float[] Read(PixelSource pixels, int y, int count, int x = 0)
    {
        var row = new PixelRow(1, x, count);
        pixels.ReadColors(row, 0, y, x, count);
        return row.Colors[0][..count];
    }
}
