using LayerTools.Model;
using LayerTools.Model.Adjustments;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Pixels.Compositing.Picture;

namespace LayerTools.Tests.Pixels.Compositing;

/// <summary>Layers of inks and of L*a*b* are mixed in those and turned to RGB after; invented colours, one pixel.</summary>
public class OtherColorsTests
{
    private static readonly Bounds Canvas = new(0, 0, 1, 1);

    [Fact]
    public void Inks_are_mixed_ink_by_ink()
    {
        var file = Create(ColorMode.Cmyk, 8, 1, 1, Colored("Front", 102, 0, 100, 200, 255), Colored("Behind", null, 255, 200, 0, 255));

        // 2/5 of the one and 3/5 of the other
        Assert.Equal([[153], [160], [80], [255]], Picture.Render(file));
        Assert.Equal([153, 160, 80, 255], Shrink(file));
    }

    [Fact]
    public void What_is_transparent_lies_on_paper_without_ink_or_on_white()
    {
        Assert.Equal([[255], [255], [255], [153], [102]], Picture.Render(Create(ColorMode.Cmyk, 8, 1, 1, Colored("Front", 102, 255, 255, 255, 0)), withAlpha: true));
        Assert.Equal([[153], [128], [128]], Picture.Render(Create(ColorMode.Lab, 8, 1, 1, Colored("Front", 102, 0, 128, 128))));
    }

    [Fact]
    public void L_a_and_b_are_mixed_each_alone()
    {
        var file = Create(ColorMode.Lab, 8, 1, 1, Colored("Front", 51, 100, 200, 128), Colored("Behind", null, 50, 100, 128));

        Assert.Equal([[60], [120], [128]], Picture.Render(file));
    }

    [Fact]
    public void A_duotone_is_drawn_in_grey_and_says_so()
    {
        var file = Create(ColorMode.Duotone, 8, 1, 1, Colored("Front", 102, 100), Colored("Behind", null, 200));

        Assert.Equal([[160]], Picture.Render(file));
        Assert.Equal([160, 160, 160, 255], Shrink(file));
        Assert.Equal(["the inks of a duotone are left out"], CompositorSupport.FindNotes(file));
    }

    [Fact]
    public void Modes_that_need_RGB_are_named_in_other_colours()
    {
        Layer Glow(BlendMode mode, params byte[] colors) => Colored("Glow", null, colors).With(layer => layer.BlendMode = mode);

        Assert.Equal(["Glow: blend mode Hue"], CompositorSupport.FindNotDrawn(Create(ColorMode.Cmyk, 8, 1, 1, Glow(BlendMode.Hue, 1, 2, 3, 4))));
        Assert.Equal(["Glow: blend mode Multiply"], CompositorSupport.FindNotDrawn(Create(ColorMode.Lab, 8, 1, 1, Glow(BlendMode.Multiply, 1, 2, 3))));
        var inks = Create(ColorMode.Cmyk, 8, 1, 1, Glow(BlendMode.Multiply, 1, 2, 3, 4));
        Assert.Empty(CompositorSupport.FindNotDrawn(inks));
        Assert.Equal(2, CompositorSupport.FindNotes(inks).Count);
    }

    [Theory]
    [InlineData(ColorMode.Cmyk)]
    [InlineData(ColorMode.Lab)]
    public void Every_mode_draws_something_and_adjustments_are_left_out_by_name(ColorMode mode)
    {
        byte[] colors = [10, 20, 30, 40];
        var count = mode == ColorMode.Cmyk ? 4 : 3;
        foreach (var blend in Enum.GetValues<BlendMode>())
        {
            var file = Create(mode, 8, 1, 1, Colored("Front", 102, colors[..count]).With(layer => (layer.BlendMode, layer.FillOpacity) = (blend, 100)), Colored("Behind", null, colors[..count]));
            Assert.Equal(count, Picture.Render(file).Length);
        }

        var inverting = ModelBuilder.Other(LayerKind.Adjustment, "Tone").With(layer => ((StubLayerDetail)layer.Detail).Changes = new Inversion());
        var adjusted = Create(mode, 8, 1, 1, inverting, Colored("Behind", null, colors[..count]));
        Assert.Equal(["Tone: adjustment layer"], CompositorSupport.FindNotDrawn(adjusted));
        Assert.Equal(10, Picture.Render(adjusted)[0][0]);
    }

    private static Layer Colored(string name, byte? alpha, params byte[] colors)
    {
        var layer = new Layer(LayerKind.Pixel, name, new StubLayerDetail()) { Bounds = Canvas };
        for (var channel = 0; channel < colors.Length; channel++) layer.Planes.Add(ModelBuilder.Raw(PlaneRole.Color0 + channel, [colors[channel]]));
        if (alpha is { } value) layer.Planes.Add(ModelBuilder.Raw(PlaneRole.Alpha, [value]));
        return layer;
    }

    private static byte[] Shrink(LayerFile file)
    {
        using var reader = new PixelReader(file);
        return new Compositor(file, reader).RenderRaster(1, 1).Pixels;
    }
}
