using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Model.Fills;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Pixels.Compositing.Picture;

namespace LayerTools.Tests.Pixels.Compositing;

public class CompositorTests
{
    private static readonly Bounds Canvas = new(0, 0, 4, 1);

    [Fact]
    public void Without_layers_the_picture_is_white() => Assert.Equal([255, 255, 255, 255], RenderGrey(Grey(4, 1)));

    [Fact]
    public void Front_layers_cover_those_behind_within_their_bounds() =>
        Assert.Equal([10, 20, 20, 10], RenderGrey(Grey(4, 1, Even("Iris", new Bounds(1, 0, 3, 1), 20), Even("White", Canvas, 10))));

    [Fact]
    public void Layers_may_reach_past_the_canvas_or_lie_outside_it()
    {
        var file = Grey(3, 2, Even("Hair", new Bounds(-5, -7, 2, 1), 20), Even("Stray", new Bounds(50, 50, 52, 52), 30), Even("Body", new Bounds(-1, 1, 9, 9), 10));

        Assert.Equal([20, 20, 255, 10, 10, 10], RenderGrey(file));
    }

    [Theory]
    [InlineData(255, 255, 0)]
    [InlineData(51, 255, 204)]
    [InlineData(255, 51, 204)]
    [InlineData(128, 128, 191)]
    [InlineData(0, 255, 255)]
    public void Opacity_and_fill_opacity_multiply(int opacity, int fill, int expected)
    {
        var layer = Even("Shade", Canvas, 0).With(shade => (shade.OpacityByte, shade.FillOpacity) = ((byte)opacity, (byte)fill));

        Assert.Equal(expected, RenderGrey(Grey(4, 1, layer))[0]);
    }

    [Fact]
    public void Blend_modes_use_the_picture_behind() =>
        Assert.Equal(50, RenderGrey(Grey(4, 1, Even("Shade", Canvas, 128).With(layer => layer.BlendMode = BlendMode.Multiply), Even("Skin", Canvas, 100)))[0]);

    [Fact]
    public void Hidden_layers_and_all_in_hidden_groups_are_left_out()
    {
        var hidden = Even("Sketch", Canvas, 0).With(layer => layer.Visible = false);
        var group = Group("Guides", BlendMode.PassThrough, Even("Line", Canvas, 0)).With(layer => layer.Visible = false);

        Assert.Equal(10, RenderGrey(Grey(4, 1, hidden, group, Even("Body", Canvas, 10)))[0]);
    }

    [Fact]
    public void A_mask_works_inside_its_bounds_and_its_default_colour_outside()
    {
        var hidesOutside = Even("Arm", Canvas, 0).Masked(new Bounds(1, 0, 3, 1), 51);
        var showsOutside = Even("Arm", Canvas, 0).Masked(new Bounds(1, 0, 3, 1), 51, outside: 255);

        Assert.Equal([255, 204, 204, 255], RenderGrey(Grey(4, 1, hidesOutside)));
        Assert.Equal([0, 204, 204, 0], RenderGrey(Grey(4, 1, showsOutside)));
    }

    [Fact]
    public void A_mask_can_be_disabled_inverted_and_weakened()
    {
        var bounds = new Bounds(1, 0, 3, 1);

        Assert.Equal([0, 0, 0, 0], RenderGrey(Grey(4, 1, Even("Arm", Canvas, 0).Masked(bounds, 51, change: mask => mask.Flags = LayerMask.DisabledFlag))));
        Assert.Equal([0, 51, 51, 0], RenderGrey(Grey(4, 1, Even("Arm", Canvas, 0).Masked(bounds, 51, change: mask => mask.Flags = LayerMask.InvertedFlag))));
        Assert.Equal([51, 41, 41, 51], RenderGrey(Grey(4, 1, Even("Arm", Canvas, 0).Masked(bounds, 51, change: mask => mask.UserDensity = 51))));
    }

    [Fact]
    public void A_mask_without_samples_is_its_default_colour_everywhere()
    {
        Assert.Equal(255, RenderGrey(Grey(4, 1, Even("Arm", Canvas, 0).Masked(Bounds.Empty, 0)))[0]);
        Assert.Equal(0, RenderGrey(Grey(4, 1, Even("Arm", Canvas, 0).Masked(Bounds.Empty, 0, outside: 255)))[0]);
    }

    [Fact]
    public void Clipped_layers_show_only_where_their_base_does()
    {
        var shade = Even("Shade", Canvas, 50).With(layer => layer.Clipped = true);
        var iris = Even("Iris", new Bounds(1, 0, 3, 1), 200, 102);

        Assert.Equal([255, 173, 173, 255], RenderGrey(Grey(4, 1, shade, iris)));
    }

    [Fact]
    public void A_run_joins_with_the_opacity_mode_and_mask_of_its_base()
    {
        var shade = Even("Shade", Canvas, 128).With(layer => layer.Clipped = true);
        var iris = Even("Iris", Canvas, 255).Masked(new Bounds(0, 0, 2, 1), 255).With(layer => (layer.BlendMode, layer.OpacityByte) = (BlendMode.Multiply, 51));

        // 100 · 128/255 is 50.2; a fifth of the way there from 100 is 90.04.
        Assert.Equal([90, 90, 100, 100], RenderGrey(Grey(4, 1, shade, iris, Even("White", Canvas, 100))));
    }

    [Fact]
    public void A_clipped_layer_mixes_with_its_base_alone()
    {
        var shade = Even("Shade", Canvas, 51).With(layer => (layer.Clipped, layer.BlendMode) = (true, BlendMode.Multiply));

        Assert.Equal(40, RenderGrey(Grey(4, 1, shade, Even("Iris", Canvas, 200), Even("White", Canvas, 10)))[0]);
    }

    [Fact]
    public void What_is_clipped_to_a_hidden_layer_is_hidden()
    {
        var shade = Even("Shade", Canvas, 0).With(layer => layer.Clipped = true);
        var iris = Even("Iris", Canvas, 50).With(layer => layer.Visible = false);

        Assert.Equal(100, RenderGrey(Grey(4, 1, shade, iris, Even("White", Canvas, 100)))[0]);
    }

    [Fact]
    public void A_clipped_layer_at_the_very_back_is_drawn_as_it_is() =>
        Assert.Equal(40, RenderGrey(Grey(4, 1, Even("Stray", Canvas, 40).With(layer => layer.Clipped = true)))[0]);

    [Fact]
    public void A_group_can_be_a_base()
    {
        var shade = Even("Shade", Canvas, 50).With(layer => layer.Clipped = true);
        var group = Group("Eye", BlendMode.PassThrough, Even("Iris", new Bounds(2, 0, 4, 1), 200));

        Assert.Equal([255, 255, 50, 50], RenderGrey(Grey(4, 1, shade, group)));
    }

    /// <summary>Seen in files: an empty clipped layer does not make the group apart from what is behind it.</summary>
    [Fact]
    public void An_empty_clipped_layer_leaves_its_base_as_it_is()
    {
        var empty = ModelBuilder.Other(LayerKind.Pixel, "Nothing painted").With(layer => layer.Clipped = true);
        var group = Group("Head", BlendMode.PassThrough, Even("Shade", Canvas, 51).With(layer => layer.BlendMode = BlendMode.Multiply));

        Assert.Equal(20, RenderGrey(Grey(4, 1, empty, group, Even("Skin", Canvas, 100)))[0]);
    }

    [Fact]
    public void Pass_through_groups_let_layers_mix_with_what_is_behind_and_isolated_ones_do_not()
    {
        Layer Shade() => Even("Shade", Canvas, 51).With(layer => layer.BlendMode = BlendMode.Multiply);

        Assert.Equal(20, RenderGrey(Grey(4, 1, Group("Head", BlendMode.PassThrough, Shade()), Even("Skin", Canvas, 100)))[0]);
        Assert.Equal(51, RenderGrey(Grey(4, 1, Group("Head", BlendMode.Normal, Shade()), Even("Skin", Canvas, 100)))[0]);
        Assert.Equal(20, RenderGrey(Grey(4, 1, Group("Head", BlendMode.Multiply, Shade()), Even("Skin", Canvas, 100)))[0]);
    }

    [Theory]
    [InlineData(BlendMode.PassThrough)]
    [InlineData(BlendMode.Normal)]
    public void A_groups_opacity_and_mask_fade_the_group_as_one(BlendMode mode)
    {
        var group = Group("Head", mode, Even("Iris", Canvas, 0), Even("White", Canvas, 200)).Masked(new Bounds(0, 0, 2, 1), 128).With(layer => layer.OpacityByte = 128);

        // 1 − (128/255)² = 0.748; layers faded one by one would show the white one through the iris.
        Assert.Equal([75, 75, 100, 100], RenderGrey(Grey(4, 1, group, Even("Skin", Canvas, 100))));
    }

    [Fact]
    public void A_faded_pass_through_group_still_mixes_with_what_is_behind()
    {
        var group = Group("Head", BlendMode.PassThrough, Even("Shade", Canvas, 0).With(layer => layer.BlendMode = BlendMode.Multiply)).With(layer => layer.OpacityByte = 51);

        Assert.Equal(80, RenderGrey(Grey(4, 1, group, Even("Skin", Canvas, 100)))[0]);
    }

    [Theory]
    [InlineData(true, new[] { 255, 20, 230, 255 }, new[] { 0, 255, 255, 0 })]
    [InlineData(false, new[] { 255, 20, 255, 255 }, new[] { 0, 255, 0, 0 })]
    public void A_sheet_cuts_off_its_layers_and_lies_behind_them(bool isPainted, int[] colors, int[] alpha)
    {
        var board = new Artboard(new Bounds(1, 0, 3, 1), isPainted ? new FillColor(230 / 255f, 230 / 255f, 230 / 255f) : null);
        var group = Group("Sheet", BlendMode.PassThrough, Even("Hair", new Bounds(0, 0, 2, 1), 20)).With(layer => ((StubLayerDetail)layer.Detail).Board = board);

        Assert.Equal([colors, alpha], Picture.Render(Grey(4, 1, group), withAlpha: true));
    }

    [Fact]
    public void Alpha_follows_the_colours_which_lie_on_white()
    {
        var channels = Picture.Render(Grey(4, 1, Even("Iris", new Bounds(1, 0, 4, 1), 0, 102)), withAlpha: true);

        Assert.Equal(2, channels.Length);
        Assert.Equal([255, 153, 153, 153], channels[0]);
        Assert.Equal([0, 102, 102, 102], channels[1]);
    }

    [Fact]
    public void Colours_keep_their_channels()
    {
        var layer = new Layer(LayerKind.Pixel, "Eye", new StubLayerDetail()) { Bounds = new Bounds(0, 0, 1, 1) };
        for (var role = PlaneRole.Color0; role <= PlaneRole.Color2; role++) layer.Planes.Add(ModelBuilder.Raw(role, [(byte)(10 + (int)role)]));

        Assert.Equal([[10], [11], [12]], Picture.Render(Create(ColorMode.Rgb, 8, 1, 1, layer)));
    }

    [Fact]
    public void Sixteen_bits_are_kept_to_the_last()
    {
        var layer = new Layer(LayerKind.Pixel, "Eye", new StubLayerDetail()) { Bounds = new Bounds(0, 0, 2, 1) };
        layer.Planes.Add(ModelBuilder.Raw(PlaneRole.Color0, [0x12, 0x35, 0xFF, 0xFF]));

        Assert.Equal([[0x1235, 0xFFFF]], Picture.Render(Create(ColorMode.Grayscale, 16, 2, 1, layer)));
    }

    [Fact]
    public void Floats_above_white_are_kept()
    {
        var layer = new Layer(LayerKind.Pixel, "Glow", new StubLayerDetail()) { Bounds = new Bounds(0, 0, 1, 1) };
        layer.Planes.Add(ModelBuilder.Raw(PlaneRole.Color0, [0x40, 0x20, 0, 0]));

        Assert.Equal([[0x40200000]], Picture.Render(Create(ColorMode.Grayscale, 32, 1, 1, layer)));
    }

    [Fact]
    public void A_subject_is_drawn_alone_and_whole()
    {
        var shade = Even("Shade", new Bounds(-2, 0, 2, 1), 50).With(layer => (layer.Clipped, layer.Visible, layer.BlendMode) = (true, false, BlendMode.Multiply));
        var file = Grey(4, 1, shade, Even("Iris", Canvas, 200));

        Assert.Equal([50, 50, 50, 50], RenderGrey(file, new CompositeOptions { Subject = shade }));
        Assert.Equal([50, 50, 255], RenderGrey(file, new CompositeOptions { Subject = shade, Area = new Bounds(0, 0, 3, 1) }));
    }

    [Fact]
    public void The_caller_can_choose_what_is_switched_on()
    {
        var file = Grey(4, 1, Even("Sketch", Canvas, 1).With(layer => layer.Visible = false), Even("Body", Canvas, 2));

        Assert.Equal(1, RenderGrey(file, new CompositeOptions { Shows = layer => layer.Name == "Sketch" })[0]);
    }

    [Fact]
    public void Damage_in_a_layer_is_told_by_its_own_error()
    {
        var layer = Even("Torn", new Bounds(0, 0, 100, 100), 0);
        layer.Planes[0] = ModelBuilder.Raw(PlaneRole.Color0, new byte[10]);

        var error = Assert.Throws<LayeredFileException>(() => RenderGrey(Grey(100, 100, layer)));

        Assert.Equal(LayeredFileErrorKind.Damaged, error.Kind);
    }

    [Fact]
    public void Colours_that_cannot_be_drawn_are_refused() =>
        Assert.Equal(LayeredFileErrorKind.NotSupported, Assert.Throws<LayeredFileException>(() => Picture.Render(Create(ColorMode.Multichannel, 8, 1, 1))).Kind);

    [Fact]
    public void Drawing_can_be_cancelled()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();

        Assert.ThrowsAny<OperationCanceledException>(() => RenderGrey(Grey(4, 1, Even("Body", Canvas, 0)), new CompositeOptions { Cancellation = stop.Token }));
    }
}
