using LayerTools.Model;
using LayerTools.Model.Effects;
using LayerTools.Model.Fills;
using LayerTools.Pixels.Compositing;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Pixels.Compositing.Effects;

/// <summary>Small grey pictures with layer effects, worked out by hand. White is what lies behind everything.</summary>
public sealed class EffectsStepTests
{
    private static readonly Bounds Middle = new(3, 3, 6, 6);

    [Fact]
    public void An_outline_outside_surrounds_the_layer_and_rounds_its_corners()
    {
        var picture = Draw(With(new OutlineEffect(BlendMode.Normal, 1f, Black, OutlinePlace.Outside, 2)));

        Assert.Equal([255, 0, 0, 100, 100, 100, 0, 0, 255], Row(picture, 4));
        // Across and down 1 and 2, the square root of 5 away from a full pixel: 2 + 1 - 2.236 is covered; 2 and 2: 2 + 1 - 2.828.
        Assert.Equal([255, 211, 60, 0, 0, 0, 60, 211, 255], Row(picture, 1));
        Assert.Equal(255, Row(picture, 0)[4]);
    }

    [Fact]
    public void An_outline_inside_leaves_the_middle_of_the_layer() =>
        Assert.Equal([255, 255, 255, 0, 100, 0, 255, 255, 255], Row(Draw(With(new OutlineEffect(BlendMode.Normal, 1f, Black, OutlinePlace.Inside, 1))), 4));

    [Fact]
    public void An_outline_on_the_edge_is_half_on_either_side() =>
        Assert.Equal([255, 255, 0, 0, 100, 0, 0, 255, 255], Row(Draw(With(new OutlineEffect(BlendMode.Normal, 1f, Black, OutlinePlace.Centre, 2))), 4));

    /// <summary>Fill opacity 0 leaves the outline alone; layer opacity does not: 255 · (1 - 128/255) = 127.</summary>
    [Fact]
    public void Fill_opacity_spares_effects_and_opacity_does_not()
    {
        var layer = With(new OutlineEffect(BlendMode.Normal, 1f, Black, OutlinePlace.Outside, 1));
        layer.FillOpacity = 0;
        Assert.Equal([255, 255, 0, 255, 255, 255, 0, 255, 255], Row(Draw(layer), 4));

        layer.OpacityByte = 128;
        Assert.Equal([255, 255, 127, 255, 255, 255, 127, 255, 255], Row(Draw(layer), 4));
    }

    /// <summary>Half covered pixels hold half of what lies below, not a quarter: 255/2 + 40/2 and not more.</summary>
    [Fact]
    public void A_fill_over_the_layer_replaces_it_also_at_soft_edges()
    {
        var layer = With(new FillEffect(BlendMode.Normal, 1f, new ColorFill(Grey(40 / 255f))), alpha: 128);

        Assert.Equal(147, Row(Draw(layer), 4)[4]);
    }

    /// <summary>A fill mixes with layer and backdrop; where the layer mixes its inside first, the layer's mode acts on it too.</summary>
    [Theory]
    [InlineData(LayerFeatures.None, 51)]
    [InlineData(LayerFeatures.InteriorBlending, 26)]
    public void Fills_follow_the_layers_mode_only_where_they_are_mixed_inside(LayerFeatures more, int expected)
    {
        var layer = With(new FillEffect(BlendMode.Normal, 1f, new ColorFill(Grey(0.2f)))).With(layer => layer.BlendMode = BlendMode.Multiply);
        ((StubLayerDetail)layer.Detail).Uses |= more;

        Assert.Equal(expected, Row(Draw(layer, Picture.Even("Below", new Bounds(0, 0, 9, 9), 128)), 4)[4]);
    }

    /// <summary>Moved 2 to the right, not softened; the layer hides it, although its own pixels are see-through.</summary>
    [Fact]
    public void A_shade_falls_beside_the_layer_and_not_through_it()
    {
        var layer = With(new ShadeEffect(BlendMode.Multiply, 1f, Grey(0)) { Right = 2 });
        layer.FillOpacity = 0;

        Assert.Equal([255, 255, 255, 255, 255, 255, 0, 0, 255], Row(Draw(layer), 4));
    }

    /// <summary>Two means of 3 pixels over a straight edge cover 8, 6, 3, 1 ninths across it, of which 3 and 1 lie outside.</summary>
    [Theory]
    [InlineData(1, 170, 227)]
    [InlineData(2, 85, 198)]
    public void A_halo_fades_out_over_its_size(double strength, int first, int second)
    {
        var wall = With(new ShadeEffect(BlendMode.Normal, 1f, Grey(0)) { Size = 3, Strength = strength }, bounds: new Bounds(-20, -20, 4, 40));

        Assert.Equal([100, 100, 100, 100, first, second, 255, 255, 255], Row(Draw(wall), 4));
    }

    [Fact]
    public void A_shade_inside_comes_from_the_edge_it_is_moved_from()
    {
        var layer = With(new ShadeEffect(BlendMode.Normal, 1f, Grey(0)) { IsInward = true, Right = 1 });

        Assert.Equal([255, 255, 255, 0, 100, 100, 255, 255, 255], Row(Draw(layer), 4));
    }

    [Fact]
    public void Effects_reach_into_the_picture_from_beyond_its_edge()
    {
        var outside = With(new OutlineEffect(BlendMode.Normal, 1f, Black, OutlinePlace.Outside, 2), bounds: new Bounds(-3, 0, 0, 9));

        Assert.Equal([0, 0, 255, 255, 255, 255, 255, 255, 255], Row(Draw(outside), 4));
    }

    private static ColorFill Black => new(Grey(0));

    private static FillColor Grey(float value) => new(value, value, value);

    private static Layer With(Effect effect, byte alpha = 255, Bounds? bounds = null)
    {
        var layer = Picture.Even("Part", bounds ?? Middle, 100, alpha);
        ((StubLayerDetail)layer.Detail).Uses = LayerFeatures.Effects;
        ((StubLayerDetail)layer.Detail).Effects = [effect];
        return layer;
    }

    private static int[] Draw(params Layer[] layers) => Picture.RenderGrey(Picture.Grey(9, 9, layers));

    private static int[] Row(int[] picture, int y) => picture[(9 * y)..(9 * (y + 1))];
}
