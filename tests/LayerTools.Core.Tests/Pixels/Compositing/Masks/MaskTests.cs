using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Pixels.Compositing.Picture;

namespace LayerTools.Tests.Pixels.Compositing.Masks;

/// <summary>Black layers with masks on white; greys are what the masks hide, of 255.</summary>
public class MaskTests
{
    private static readonly Bounds Canvas = new(0, 0, 4, 1);

    [Fact]
    public void A_vector_mask_shows_what_is_inside_its_path() => Assert.Equal([255, 0, 128, 255], RenderGrey(Grey(4, 1, Arm().Cut(1, 2.5))));

    [Fact]
    public void A_disabled_path_hides_nothing() => Assert.Equal([0, 0, 0, 0], RenderGrey(Grey(4, 1, Arm().Cut(1, 2.5, isDisabled: true))));

    [Fact]
    public void Painted_and_vector_mask_both_hide() => Assert.Equal([255, 51, 255, 255], RenderGrey(Grey(4, 1, Arm().Cut(1, 2).Masked(new Bounds(1, 0, 4, 1), 204))));

    [Fact]
    public void Each_mask_has_its_density() =>
        Assert.Equal([51, 0, 0, 51], RenderGrey(Grey(4, 1, Arm().Cut(1, 3).Masked(Canvas, 255, change: mask => mask.VectorDensity = 51))));

    [Fact]
    public void A_group_can_have_a_vector_mask() =>
        Assert.Equal([255, 0, 0, 255], RenderGrey(Grey(4, 1, Group("Arms", BlendMode.PassThrough, Arm()).Cut(1, 3))));

    [Theory]
    [InlineData(BlendMode.PassThrough)]
    [InlineData(BlendMode.Normal)]
    public void A_group_s_mask_hides_all_that_reaches_past_it(BlendMode mode)
    {
        var canvas = new Bounds(0, 0, 90, 1);
        var group = Group("Arms", mode, Even("Arm", canvas, 0)).Masked(new Bounds(30, 0, 60, 1), 255);

        var picture = RenderGrey(Grey(90, 1, group, Even("Wall", canvas, 100, alpha: 255)));

        Assert.Equal([.. Enumerable.Repeat(100, 30), .. Enumerable.Repeat(0, 30), .. Enumerable.Repeat(100, 30)], picture);
    }

    /// <summary>Far from an edge a feathered mask is as it was; half way through it, half.</summary>
    [Fact]
    public void A_feathered_mask_fades_over_its_edge()
    {
        var canvas = new Bounds(0, 0, 41, 41);
        var picture = RenderGrey(Grey(41, 41, Even("Arm", canvas, 0).Masked(new Bounds(-40, -40, 20, 81), 255, change: mask => mask.UserFeather = 3)));

        var row = picture.AsSpan(20 * 41, 41).ToArray();
        Assert.Equal([0, 255], [row[0], row[40]]);
        Assert.InRange(row[19] + row[20], 253, 257);
        Assert.Equal(row.Order(), row);
        // One standard deviation to the right of the edge, 1 - 0.8413 of the mask is left.
        Assert.InRange((row[22] + row[23]) / 2.0, 0.8313 * 255, 0.8513 * 255);
    }

    [Fact]
    public void A_feathered_vector_mask_fades_as_a_painted_one_does()
    {
        var canvas = new Bounds(0, 0, 41, 41);
        var painted = RenderGrey(Grey(41, 41, Even("Arm", canvas, 0).Masked(new Bounds(10, 0, 30, 41), 255, change: mask => mask.UserFeather = 3)));
        var vector = RenderGrey(Grey(41, 41, Even("Arm", canvas, 0).Cut(10, 30, width: 41).Masked(canvas, 255, change: mask => mask.VectorFeather = 3)));

        Assert.All(painted.Zip(vector), pair => Assert.InRange(pair.First - pair.Second, -1, 1));
    }

    [Fact]
    public void A_rendered_mask_is_used_as_it_is() =>
        Assert.Equal([255, 155, 255, 255], RenderGrey(Grey(4, 1, Arm().Cut(0, 4).Masked(new Bounds(1, 0, 2, 1), 100, change: mask => mask.Flags = LayerMask.RenderedFlag))));

    [Fact]
    public void A_mask_larger_than_the_canvas_works() =>
        Assert.Equal([155, 155, 155, 155], RenderGrey(Grey(4, 1, Arm().Masked(new Bounds(-9, -9, 20, 20), 100))));

    [Fact]
    public void A_mask_without_its_channel_is_its_default_colour() =>
        Assert.Equal([0, 0, 0, 0], RenderGrey(Grey(4, 1, Arm().With(arm => arm.Mask = new LayerMask { Bounds = Canvas, DefaultColor = 255 }))));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.NegativeInfinity)]
    [InlineData(-3.0)]
    public void A_feather_that_is_none_is_none(double feather) =>
        Assert.Equal([255, 0, 0, 255], RenderGrey(Grey(4, 1, Arm().Masked(new Bounds(1, 0, 3, 1), 255, change: mask => mask.UserFeather = feather))));

    [Theory]
    [InlineData(1e6)]
    [InlineData(double.PositiveInfinity)]
    public void A_feather_without_measure_does_no_harm(double feather) =>
        Assert.All(RenderGrey(Grey(4, 1, Arm().Masked(new Bounds(1, 0, 3, 1), 255, change: mask => mask.UserFeather = feather))), grey => Assert.InRange(grey, 250, 255));

    private static Layer Arm() => Even("Arm", Canvas, 0);
}
