using LayerTools.Model;
using LayerTools.Pixels.Compositing;
using LayerTools.Pixels.Compositing.Blending;
using Xunit;

namespace LayerTools.Tests.Pixels.Compositing.Blending;

public class FillBlenderTests
{
    /// <summary>Mode, cb, cs and the result at half fill, worked out by hand: the source half way to the mode's neutral colour, then the mode's formula.</summary>
    [Theory]
    [InlineData(BlendMode.ColorBurn, 0.7, 0.2, 0.5)]
    [InlineData(BlendMode.LinearBurn, 0.75, 0.5, 0.5)]
    [InlineData(BlendMode.ColorDodge, 0.3, 0.8, 0.5)]
    [InlineData(BlendMode.LinearDodge, 0.25, 0.5, 0.5)]
    [InlineData(BlendMode.Difference, 0.25, 1, 0.25)]
    [InlineData(BlendMode.VividLight, 0.3, 0.9, 0.5)]
    [InlineData(BlendMode.LinearLight, 0.25, 0.75, 0.5)]
    [InlineData(BlendMode.HardMix, 0.5, 0.4, 0.4)]
    public void Half_filled_colours_are_half_way_to_neutral_before_the_formula(BlendMode mode, double backdrop, double source, double expected)
    {
        Assert.Equal(expected, Mix(Blenders.TryGetFilled(mode, 0.5f)!, backdrop, 1, source, 1).Color, 5);
    }

    [Theory]
    [MemberData(nameof(Modes))]
    public void An_unfilled_layer_changes_nothing(BlendMode mode) => Assert.Equal((0.4, 1), Mix(Blenders.TryGetFilled(mode, 0f)!, 0.4, 1, 0.7, 1), Near);

    [Theory]
    [MemberData(nameof(Modes))]
    public void Over_nothing_fill_is_opacity(BlendMode mode) => Assert.Equal((0.35, 0.5), Mix(Blenders.TryGetFilled(mode, 0.5f)!, 0, 0, 0.7, 1), Near);

    [Theory]
    [MemberData(nameof(Modes))]
    public void Almost_full_fill_is_almost_the_mode_itself(BlendMode mode)
    {
        var (color, _) = Mix(Blenders.TryGetFilled(mode, 0.9999f)!, 0.3, 1, 0.6, 0.5);

        Assert.Equal(Mix(Blenders.TryGet(mode)!, 0.3, 1, 0.6, 0.5).Color, color, 0.001);
    }

    public static TheoryData<BlendMode> Modes => [.. Blenders.Supported.Where(mode => !Blenders.FillActsAsOpacity(mode))];

    private static bool Near((double Color, double Alpha) one, (double Color, double Alpha) other) => Math.Abs(one.Color - other.Color) < 1e-5 && Math.Abs(one.Alpha - other.Alpha) < 1e-5;

    private static (double Color, double Alpha) Mix(Blender blender, double backdrop, double alphaBelow, double source, double alpha)
    {
        var target = Fill(backdrop * alphaBelow, alphaBelow);
        blender.DrawOver(target, 0, Fill(source, alpha), 1);
        return (target.Colors[0][0], target.Alpha[0]);
    }

    private static PixelRow Fill(double color, double alpha)
    {
        var row = new PixelRow(1, 0, 1);
        row.Colors[0][0] = (float)color;
        row.Alpha[0] = (float)alpha;
        return row;
    }
}
