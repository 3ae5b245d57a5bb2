using LayerTools.Model;
using LayerTools.Pixels.Compositing;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Pixels.Compositing.Picture;

namespace LayerTools.Tests.Pixels.Compositing.Blending;

public class BlendingRulesTests
{
    private static readonly Bounds Canvas = new(0, 0, 4, 1);
    private static readonly Bounds Middle = new(1, 0, 3, 1);

    [Fact]
    public void A_hole_to_the_bottom_shows_the_backdrop_of_the_picture()
    {
        var hole = Even("Hole", Middle, 0).Ruled(Knockout.ToBottom).With(layer => layer.FillOpacity = 0);

        Assert.Equal([50, 200, 200, 50], RenderGrey(Grey(4, 1, hole, Even("Coat", Canvas, 50, 255), Even("Paper", Canvas, 200))));
    }

    [Fact]
    public void Without_an_opaque_backdrop_a_hole_shows_nothing()
    {
        var hole = Even("Hole", Middle, 0).Ruled(Knockout.ToBottom).With(layer => layer.FillOpacity = 0);
        var channels = Picture.Render(Grey(4, 1, hole, Even("Coat", Canvas, 50, 255)), withAlpha: true);

        Assert.Equal([255, 0, 0, 255], channels[1]);
    }

    [Fact]
    public void A_hole_to_the_group_shows_what_lies_below_the_group()
    {
        Layer[] Layers(BlendMode mode, Knockout knockout) =>
        [
            Group("Head", mode, Even("Hole", Middle, 0).Ruled(knockout).With(layer => layer.FillOpacity = 0), Even("Hair", Canvas, 20, 255)),
            Even("Coat", Canvas, 50, 255),
            Even("Paper", Canvas, 200),
        ];

        Assert.Equal([20, 50, 50, 20], RenderGrey(Grey(4, 1, Layers(BlendMode.PassThrough, Knockout.ToGroup))));
        Assert.Equal([20, 200, 200, 20], RenderGrey(Grey(4, 1, Layers(BlendMode.PassThrough, Knockout.ToBottom))));
        // In an isolated group there is nothing below, and a hole in the group shows what lies behind it either way.
        Assert.Equal([20, 50, 50, 20], RenderGrey(Grey(4, 1, Layers(BlendMode.Normal, Knockout.ToGroup))));
        Assert.Equal([20, 50, 50, 20], RenderGrey(Grey(4, 1, Layers(BlendMode.Normal, Knockout.ToBottom))));
    }

    [Fact]
    public void A_half_filled_layer_mixes_with_what_it_cuts_through_to_and_its_opacity_fades_all_of_it()
    {
        Layer Hole(byte opacity) => Even("Hole", Middle, 0).Ruled(Knockout.ToBottom).With(layer => (layer.FillOpacity, layer.OpacityByte) = (51, opacity));

        // A fifth of black on 200 is 160; half of that on 50 is 105.
        Assert.Equal([50, 160, 160, 50], RenderGrey(Grey(4, 1, Hole(255), Even("Coat", Canvas, 50, 255), Even("Paper", Canvas, 200))));
        Assert.Equal([50, 105, 105, 50], RenderGrey(Grey(4, 1, Hole(128), Even("Coat", Canvas, 50, 255), Even("Paper", Canvas, 200))));
    }

    [Fact]
    public void Blend_modes_of_a_hole_see_the_backdrop_alone()
    {
        var hole = Even("Hole", Middle, 51).Ruled(Knockout.ToBottom).With(layer => layer.BlendMode = BlendMode.Multiply);

        Assert.Equal([50, 40, 40, 50], RenderGrey(Grey(4, 1, hole, Even("Coat", Canvas, 50, 255), Even("Paper", Canvas, 200))));
    }

    [Fact]
    public void Clipped_layers_that_blend_apart_mix_with_the_picture_and_stay_in_the_shape_of_their_base()
    {
        var shade = Even("Shade", Canvas, 51).With(layer => (layer.Clipped, layer.BlendMode) = (true, BlendMode.Multiply));
        var iris = Even("Iris", Middle, 255).With(layer => (layer.OpacityByte, layer.BlendMode, ((StubLayerDetail)layer.Detail).Uses) = (128, BlendMode.Multiply, LayerFeatures.ClippedApart));

        // White in multiply changes nothing; the shade then darkens 100 to a fifth, though the base is half transparent.
        Assert.Equal([100, 20, 20, 100], RenderGrey(Grey(4, 1, shade, iris, Even("White", Canvas, 100))));
    }

    [Fact]
    public void Excluded_channels_stay_as_they_are_below()
    {
        var green = Colored("Tint", 10, 20, 30).Ruled(Knockout.None, excluded: [1]);

        Assert.Equal([[10], [200], [30]], Picture.Render(Create(ColorMode.Rgb, 8, 1, 1, green, Colored("Skin", 100, 200, 250))));
        Assert.Equal([[10], [255], [30]], Picture.Render(Create(ColorMode.Rgb, 8, 1, 1, Colored("Tint", 10, 20, 30).Ruled(Knockout.None, excluded: [1]))));
    }

    /// <summary>Limits 50, 150, 200, 220: 100 is half way up the dark slope, 215 three quarters down the light one.</summary>
    [Theory]
    [InlineData(40, 255)]
    [InlineData(50, 255)]
    [InlineData(100, 178)]
    [InlineData(150, 150)]
    [InlineData(200, 200)]
    [InlineData(215, 245)]
    [InlineData(220, 255)]
    [InlineData(230, 255)]
    public void A_layer_is_seen_where_its_own_brightness_is_in_range(int grey, int expected) =>
        Assert.Equal(expected, RenderGrey(Grey(4, 1, Even("Smoke", Canvas, (byte)grey).Ruled(Knockout.None, new BlendingRange(null, new BrightnessLimits(50, 150, 200, 220), BrightnessLimits.All))))[0]);

    [Theory]
    [InlineData(40, 40)]
    [InlineData(100, 50)]
    [InlineData(180, 0)]
    [InlineData(230, 230)]
    public void A_layer_is_seen_where_the_brightness_below_is_in_range(int below, int expected)
    {
        var smoke = Even("Smoke", Canvas, 0).Ruled(Knockout.None, new BlendingRange(null, BrightnessLimits.All, new BrightnessLimits(50, 150, 200, 220)));

        Assert.Equal(expected, RenderGrey(Grey(4, 1, smoke, Even("Wall", Canvas, (byte)below)))[0]);
    }

    [Fact]
    public void Grey_is_luminosity_and_a_channel_is_itself()
    {
        var bright = new BrightnessLimits(128, 128, 255, 255);
        int[][] Draw(int? channel) => Picture.Render(Create(ColorMode.Rgb, 8, 1, 1,
            Colored("Smoke", 0, 0, 0).Ruled(Knockout.None, new BlendingRange(channel, BrightnessLimits.All, bright)), Colored("Wall", 255, 0, 200)));

        // 0.3 · 255 + 0.11 · 200 is 98.5, too dark.
        Assert.Equal([[255], [0], [200]], Draw(null));
        Assert.Equal([[0], [0], [0]], Draw(0));
        Assert.Equal([[255], [0], [200]], Draw(1));
        Assert.Equal([[0], [0], [0]], Draw(2));
    }

    [Fact]
    public void What_is_transparent_below_has_no_brightness()
    {
        var smoke = Even("Smoke", Canvas, 0).Ruled(Knockout.None, new BlendingRange(null, BrightnessLimits.All, new BrightnessLimits(200, 200, 255, 255)));

        Assert.Equal(0, RenderGrey(Grey(4, 1, smoke))[0]);
    }

    [Fact]
    public void What_no_real_file_confirms_is_noted()
    {
        var hole = Even("Hole", Middle, 0).Ruled(Knockout.ToBottom, new BlendingRange(null, BrightnessLimits.All, new BrightnessLimits(1, 2, 3, 4)), excluded: [0])
            .Masked(Canvas, 255, change: mask => mask.UserFeather = 2).With(layer => (layer.FillOpacity, layer.BlendMode) = (100, BlendMode.HardMix));
        var file = Grey(4, 1, hole, Even("Dust", Canvas, 0).With(layer => layer.BlendMode = BlendMode.Dissolve), Even("Paper", Canvas, 200));

        Assert.Equal(
            ["Dust: dissolve, with a noise of our own", "Hole: fill opacity in blend mode HardMix", "Hole: feathered mask", "Hole: blending ranges", "Hole: channels left out of blending", "Hole: a layer that cuts through"],
            CompositorSupport.FindNotes(file));
        Assert.Empty(CompositorSupport.FindNotDrawn(file));
    }

    [Theory]
    [InlineData(ColorMode.Cmyk, 1)]
    [InlineData(ColorMode.Lab, 2)]
    public void Rules_about_brightness_need_colours_of_light(ColorMode mode, int count)
    {
        var layer = Colored("Skin", 1, 2, 3).With(skin => ((StubLayerDetail)skin.Detail).Uses = LayerFeatures.BlendingRanges | LayerFeatures.ChannelRestrictions);
        layer.Planes.Add(ModelBuilder.Raw(PlaneRole.Color3, [4]));

        Assert.Equal(count, CompositorSupport.FindNotDrawn(Create(mode, 8, 1, 1, layer)).Count);
    }

    private static Layer Colored(string name, byte red, byte green, byte blue)
    {
        var layer = new Layer(LayerKind.Pixel, name, new StubLayerDetail()) { Bounds = new Bounds(0, 0, 1, 1) };
        layer.Planes.Add(ModelBuilder.Raw(PlaneRole.Color0, [red]));
        layer.Planes.Add(ModelBuilder.Raw(PlaneRole.Color1, [green]));
        layer.Planes.Add(ModelBuilder.Raw(PlaneRole.Color2, [blue]));
        return layer;
    }
}
