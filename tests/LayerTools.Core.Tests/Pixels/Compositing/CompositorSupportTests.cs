using LayerTools.Model;
using LayerTools.Model.Effects;
using LayerTools.Model.Fills;
using LayerTools.Pixels.Compositing;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Pixels.Compositing.Picture;

namespace LayerTools.Tests.Pixels.Compositing;

public class CompositorSupportTests
{
    private static readonly Bounds Canvas = new(0, 0, 4, 1);

    [Fact]
    public void Plain_layers_groups_masks_and_clipping_are_supported()
    {
        var file = Grey(4, 1,
            Even("Shade", Canvas, 0).With(layer => layer.Clipped = true),
            Group("Head", BlendMode.PassThrough, Even("Face", Canvas, 1).Masked(Canvas, 9, change: mask => mask.UserDensity = 100)),
            ModelBuilder.Other(LayerKind.Text, "Empty text"));

        Assert.Empty(CompositorSupport.FindNotDrawn(file));
    }

    [Theory]
    [InlineData(LayerFeatures.Artboard, "Head/Eye: artboard that cannot be read")]
    public void Features_that_cannot_be_drawn_are_named_with_the_layer(LayerFeatures feature, string expected)
    {
        var eye = Even("Eye", Canvas, 0).With(layer => ((StubLayerDetail)layer.Detail).Uses = feature);

        Assert.Equal([expected], CompositorSupport.FindNotDrawn(Grey(4, 1, Group("Head", BlendMode.PassThrough, eye))));
    }

    [Fact]
    public void Effects_are_named_where_they_cannot_be_drawn()
    {
        var relief = Even("Eye", Canvas, 0).With(layer => ((StubLayerDetail)layer.Detail).Uses = LayerFeatures.Effects);
        ((StubLayerDetail)relief.Detail).Effects = [new UndrawnEffect("layer effect: relief"), new FillEffect(BlendMode.Unknown, 1f, new ColorFill(default)), new FillEffect(BlendMode.Normal, 1f, new ColorFill(default))];

        Assert.Equal(["Eye: layer effect: relief", "Eye: layer effect in blend mode Unknown"], CompositorSupport.FindNotDrawn(Grey(4, 1, relief)));
    }

    [Fact]
    public void Effects_drawn_from_memory_are_noted()
    {
        var glow = Even("Eye", Canvas, 0).With(layer => ((StubLayerDetail)layer.Detail).Uses = LayerFeatures.Effects);
        ((StubLayerDetail)glow.Detail).Effects = [new ShadeEffect(BlendMode.Normal, 1f, default) { Size = 4, Spread = 0.5 }, new ShadeEffect(BlendMode.Normal, 1f, default) { Size = 4 }];

        Assert.Equal(["Eye: shade or halo with a solid part, whose extent is from memory"], CompositorSupport.FindNotes(Grey(4, 1, glow)));
    }

    [Fact]
    public void What_only_some_layers_cannot_do_is_named()
    {
        var group = Group("Head", BlendMode.PassThrough, Even("Eye", Canvas, 0)).With(layer => ((StubLayerDetail)layer.Detail).Uses = LayerFeatures.BlendingRanges);
        var clipped = Even("Shade", Canvas, 0).With(layer => (layer.Clipped, ((StubLayerDetail)layer.Detail).Uses) = (true, LayerFeatures.Knockout));

        Assert.Equal(["Shade: knockout of a clipped layer", "Head: blending ranges of a pass-through group"], CompositorSupport.FindNotDrawn(Grey(4, 1, clipped, group)));
    }

    [Theory]
    [InlineData(LayerKind.Adjustment, "Tone: adjustment layer")]
    [InlineData(LayerKind.Fill, "Tone: live content without stored pixels")]
    [InlineData(LayerKind.Shape, "Tone: live content without stored pixels")]
    public void Layers_that_work_without_pixels_are_named(LayerKind kind, string expected) =>
        Assert.Equal([expected], CompositorSupport.FindNotDrawn(Grey(4, 1, ModelBuilder.Other(kind, "Tone"))));

    [Theory]
    [InlineData(BlendMode.Unknown)]
    [InlineData(BlendMode.PassThrough)]
    public void Modes_outside_the_table_are_named(BlendMode mode) =>
        Assert.Equal([$"Glow: blend mode {mode}"], CompositorSupport.FindNotDrawn(Grey(4, 1, Even("Glow", Canvas, 0).With(layer => layer.BlendMode = mode))));

    [Fact]
    public void What_is_not_seen_does_not_matter()
    {
        Layer Tone() => ModelBuilder.Other(LayerKind.Adjustment, "Tone");
        var file = Grey(4, 1,
            Tone().With(layer => layer.Visible = false),
            Group("Notes", BlendMode.PassThrough, Tone()).With(layer => layer.Visible = false),
            Tone().With(layer => layer.Clipped = true),
            Even("Base", Canvas, 0).With(layer => layer.Visible = false),
            ModelBuilder.Other(LayerKind.Pixel, "Nothing painted").With(layer => layer.BlendMode = BlendMode.Unknown));

        Assert.Empty(CompositorSupport.FindNotDrawn(file));
    }

    [Theory]
    [InlineData(ColorMode.Multichannel, 8)]
    [InlineData(ColorMode.Indexed, 8)]
    [InlineData(ColorMode.Bitmap, 1)]
    [InlineData(ColorMode.Grayscale, 1)]
    public void Files_in_other_colours_are_refused_as_a_whole(ColorMode mode, int bitDepth) =>
        Assert.StartsWith("The file", Assert.Single(CompositorSupport.FindNotDrawn(Create(mode, bitDepth, 4, 1))), StringComparison.Ordinal);

    [Fact]
    public void A_file_without_layers_has_only_its_merged_picture() =>
        Assert.Single(CompositorSupport.FindNotDrawn(Grey(4, 1)));
}
