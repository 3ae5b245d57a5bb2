using System.Buffers.Binary;
using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Pixels.Compositing;
using LayerTools.Pixels.Compositing.Blending;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Pixels.Compositing.Picture;

namespace LayerTools.Tests.Pixels.Compositing;

/// <summary>What files should not hold and do: drawn sensibly or listed, never a crash.</summary>
public class BadInputTests
{
    private static readonly Bounds Canvas = new(0, 0, 4, 1);

    [Theory]
    [InlineData(PlaneRole.Color0)]
    [InlineData(PlaneRole.Color1)]
    [InlineData(PlaneRole.Color2)]
    public void A_layer_that_lacks_a_colour_is_listed(PlaneRole missing)
    {
        var layer = ModelBuilder.Pixel("Arm");
        layer.Planes.RemoveAll(plane => plane.Role == missing);

        Assert.Equal(["Arm: colour channels are missing"], CompositorSupport.FindNotDrawn(ModelBuilder.File(layer)));
    }

    [Fact]
    public void A_layer_whose_colours_are_empty_is_listed_unless_its_alpha_is_too()
    {
        var layer = ModelBuilder.Pixel("Arm");
        layer.Planes = [.. layer.Planes.Select(plane => plane.Role == PlaneRole.Alpha ? plane : new Plane(plane.Role, 0, MemoryBytes.Empty))];
        var empty = ModelBuilder.Pixel("Leg");
        empty.Planes = [.. empty.Planes.Select(plane => new Plane(plane.Role, 0, MemoryBytes.Empty))];

        Assert.Equal(["Arm: colour channels are missing"], CompositorSupport.FindNotDrawn(ModelBuilder.File(layer, empty)));
        Assert.All(Picture.Render(ModelBuilder.File(empty)).SelectMany(channel => channel), value => Assert.Equal(255, value));
    }

    [Fact]
    public void A_layer_without_any_channel_draws_nothing()
    {
        var layer = new Layer(LayerKind.Pixel, "Arm", new StubLayerDetail()) { Bounds = Canvas };

        Assert.Equal([255, 255, 255, 255], RenderGrey(Grey(4, 1, layer)));
        Assert.NotEmpty(CompositorSupport.FindNotDrawn(Grey(4, 1, new Layer(LayerKind.Pixel, "Arm", new StubLayerDetail()) { Bounds = Canvas })));
    }

    [Theory]
    [InlineData(2, 0, 2, 1)]
    [InlineData(0, 1, 4, 1)]
    [InlineData(0, 0, 0, -1)]
    public void Layers_without_size_draw_nothing(int left, int top, int right, int bottom)
    {
        var layer = new Layer(LayerKind.Pixel, "Arm", new StubLayerDetail()) { Bounds = new Bounds(left, top, right, bottom) };
        layer.Planes.Add(ModelBuilder.Raw(PlaneRole.Color0, []));
        var file = Grey(4, 1, layer, Even("Body", Canvas, 7));

        Assert.Equal([7, 7, 7, 7], RenderGrey(file));
        Assert.Empty(CompositorSupport.FindNotDrawn(file));
    }

    [Theory]
    [InlineData(float.NaN, 1f, 0f)]
    [InlineData(float.PositiveInfinity, 1f, 0f)]
    [InlineData(0.25f, float.NaN, 1f)]
    [InlineData(0.25f, float.NegativeInfinity, 1f)]
    [InlineData(0.25f, 7f, 0.25f)]
    [InlineData(0.25f, -7f, 1f)]
    public void Floats_that_are_no_numbers_do_not_spread(float color, float alpha, float expected)
    {
        var layer = Float("Glow", color, alpha);

        Assert.Equal(expected, RenderFloat(layer));
    }

    [Theory]
    [MemberData(nameof(Modes))]
    public void No_mode_makes_what_is_no_number(BlendMode mode)
    {
        foreach (var below in new[] { float.MaxValue, -float.MaxValue, 3f, -1f, 0f, float.Epsilon, 1f })
        {
            foreach (var above in new[] { float.MaxValue, -float.MaxValue, 2f, -1f, 0f, float.Epsilon, 1f })
            {
                foreach (var fill in new byte[] { 255, 100 })
                {
                    var layer = Float("Glow", above, 0.5f).With(glow => (glow.BlendMode, glow.FillOpacity) = (mode, fill));

                    Assert.True(float.IsFinite(RenderFloat(layer, Float("Wall", below, 1f))), $"{mode} {below} {above} {fill}");
                }
            }
        }
    }

    [Fact]
    public void A_mask_far_larger_than_any_canvas_is_read_only_where_it_is_seen()
    {
        var layer = Even("Arm", Canvas, 0);
        layer.Mask = new LayerMask { Bounds = new Bounds(-1_000_000, -1_000_000, 1_000_000, 1_000_000), DefaultColor = 255 };

        Assert.Equal([0, 0, 0, 0], RenderGrey(Grey(4, 1, layer)));
    }

    [Fact]
    public void A_feathered_mask_beyond_measure_is_refused_in_words()
    {
        var bounds = new Bounds(0, 0, 300_000, 300_000);
        var layer = Even("Arm", new Bounds(0, 0, 1, 1), 0);
        layer.Bounds = bounds;
        layer.Mask = new LayerMask { Bounds = bounds, UserFeather = 9 };
        layer.Planes.Add(ModelBuilder.Raw(PlaneRole.UserMask, []));

        Assert.Throws<LayeredFileException>(() => Picture.Render(Grey(300_000, 300_000, layer)));
    }

    public static TheoryData<BlendMode> Modes => [.. Blenders.Supported];

    private static Layer Float(string name, float color, float alpha)
    {
        var layer = new Layer(LayerKind.Pixel, name, new StubLayerDetail()) { Bounds = new Bounds(0, 0, 1, 1) };
        layer.Planes.Add(ModelBuilder.Raw(PlaneRole.Color0, Store(color)));
        layer.Planes.Add(ModelBuilder.Raw(PlaneRole.Alpha, Store(alpha)));
        return layer;
    }

    private static byte[] Store(float value)
    {
        var bytes = new byte[4];
        BinaryPrimitives.WriteSingleBigEndian(bytes, value);
        return bytes;
    }

    private static float RenderFloat(params Layer[] layers) =>
        BitConverter.Int32BitsToSingle(Picture.Render(Create(ColorMode.Grayscale, 32, 1, 1, layers))[0][0]);
}
