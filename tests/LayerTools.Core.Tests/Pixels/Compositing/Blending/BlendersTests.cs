using LayerTools.Model;
using LayerTools.Pixels.Compositing;
using LayerTools.Pixels.Compositing.Blending;
using Xunit;

namespace LayerTools.Tests.Pixels.Compositing.Blending;

public class BlendersTests
{
    /// <summary>Mode, cb, cs and B(cb, cs), worked out by hand from W3C Compositing and Blending Level 1, section 9.1, at both ends, at the limits of each case and between.</summary>
    public static TheoryData<BlendMode, double, double, double> Values => new()
    {
        { BlendMode.Normal, 0.25, 0.75, 0.75 },
        { BlendMode.Normal, 1, 0, 0 },
        { BlendMode.Multiply, 0.5, 0.5, 0.25 },
        { BlendMode.Multiply, 0.2, 1, 0.2 },
        { BlendMode.Multiply, 0.2, 0, 0 },
        { BlendMode.Screen, 0.5, 0.5, 0.75 },
        { BlendMode.Screen, 0.2, 0, 0.2 },
        { BlendMode.Screen, 0.2, 1, 1 },
        { BlendMode.Overlay, 0.25, 0.5, 0.25 },
        { BlendMode.Overlay, 0.5, 0.3, 0.3 },
        { BlendMode.Overlay, 0.75, 0.5, 0.75 },
        { BlendMode.Overlay, 0.75, 0.2, 0.6 },
        { BlendMode.Overlay, 0, 1, 0 },
        { BlendMode.Overlay, 1, 0, 1 },
        { BlendMode.Darken, 0.3, 0.6, 0.3 },
        { BlendMode.Darken, 0.6, 0.3, 0.3 },
        { BlendMode.Lighten, 0.3, 0.6, 0.6 },
        { BlendMode.Lighten, 0.6, 0.3, 0.6 },
        { BlendMode.ColorDodge, 0.2, 0.5, 0.4 },
        { BlendMode.ColorDodge, 0.8, 0.5, 1 },
        { BlendMode.ColorDodge, 0, 1, 0 },
        { BlendMode.ColorDodge, 0.1, 1, 1 },
        { BlendMode.ColorDodge, 0.3, 0, 0.3 },
        { BlendMode.ColorBurn, 0.8, 0.5, 0.6 },
        { BlendMode.ColorBurn, 0.2, 0.5, 0 },
        { BlendMode.ColorBurn, 1, 0, 1 },
        { BlendMode.ColorBurn, 0.9, 0, 0 },
        { BlendMode.ColorBurn, 0.3, 1, 0.3 },
        { BlendMode.HardLight, 0.5, 0.25, 0.25 },
        { BlendMode.HardLight, 0.3, 0.5, 0.3 },
        { BlendMode.HardLight, 0.5, 0.75, 0.75 },
        { BlendMode.HardLight, 0.2, 0.75, 0.6 },
        { BlendMode.SoftLight, 0.5, 0.25, 0.375 },
        { BlendMode.SoftLight, 0.4, 0.5, 0.4 },
        { BlendMode.SoftLight, 0.25, 1, 0.5 },
        { BlendMode.SoftLight, 0.64, 0.75, 0.72 },
        { BlendMode.SoftLight, 0.125, 1, 0.34375 },
        { BlendMode.SoftLight, 0, 1, 0 },
        { BlendMode.Difference, 0.3, 0.8, 0.5 },
        { BlendMode.Difference, 0.8, 0.3, 0.5 },
        { BlendMode.Exclusion, 0.5, 0.5, 0.5 },
        { BlendMode.Exclusion, 0.2, 1, 0.8 },
        { BlendMode.Exclusion, 0.2, 0, 0.2 },
        { BlendMode.Dissolve, 0.25, 0.75, 0.75 },
        { BlendMode.LinearBurn, 0.75, 0.5, 0.25 },
        { BlendMode.LinearBurn, 0.25, 0.5, 0 },
        { BlendMode.LinearBurn, 0.3, 1, 0.3 },
        { BlendMode.LinearDodge, 0.25, 0.5, 0.75 },
        { BlendMode.LinearDodge, 0.75, 0.5, 1 },
        { BlendMode.LinearDodge, 0.3, 0, 0.3 },
        { BlendMode.VividLight, 0.8, 0.25, 0.6 },
        { BlendMode.VividLight, 0.3, 0.5, 0.3 },
        { BlendMode.VividLight, 0.2, 0.75, 0.4 },
        { BlendMode.VividLight, 1, 0, 0 },
        { BlendMode.VividLight, 0.9, 0, 0 },
        { BlendMode.VividLight, 0, 1, 1 },
        { BlendMode.VividLight, 0.1, 1, 1 },
        { BlendMode.LinearLight, 0.5, 0.25, 0 },
        { BlendMode.LinearLight, 0.75, 0.25, 0.25 },
        { BlendMode.LinearLight, 0.3, 0.5, 0.3 },
        { BlendMode.LinearLight, 0.25, 0.75, 0.75 },
        { BlendMode.LinearLight, 0.75, 0.75, 1 },
        { BlendMode.PinLight, 0.8, 0.25, 0.5 },
        { BlendMode.PinLight, 0.3, 0.25, 0.3 },
        { BlendMode.PinLight, 0.3, 0.5, 0.3 },
        { BlendMode.PinLight, 0.25, 0.75, 0.5 },
        { BlendMode.PinLight, 0.8, 0.75, 0.8 },
        { BlendMode.HardMix, 0.5, 0.5, 0.5 },
        { BlendMode.HardMix, 0.5, 0.51, 1 },
        { BlendMode.HardMix, 0, 1, 0 },
        { BlendMode.HardMix, 0.5, 0.49, 0 },
        { BlendMode.HardMix, 1, 0, 1 },
        { BlendMode.HardMix, 0, 0.99, 0 },
        { BlendMode.Subtract, 0.75, 0.5, 0.25 },
        { BlendMode.Subtract, 0.25, 0.5, 0 },
        { BlendMode.Divide, 0.25, 0.5, 0.5 },
        { BlendMode.Divide, 0.5, 0.25, 1 },
        { BlendMode.Divide, 0.5, 0, 1 },
        { BlendMode.Divide, 0, 0, 0 },
    };

    [Theory]
    [MemberData(nameof(Values))]
    public void Opaque_pixels_mix_as_the_standard_says(BlendMode mode, double backdrop, double source, double expected)
    {
        var target = Fill(backdrop, 1);

        Blenders.TryGet(mode)!.DrawOver(target, 0, Fill(source, 1), 1);

        Assert.Equal(expected, target.Colors[0][0], 5);
        Assert.Equal(1, target.Alpha[0], 6);
    }

    /// <summary>co = cs·αs·(1 − αb) + cb·αb·(1 − αs) + αs·αb·B(cb, cs), αo = αs + αb·(1 − αs): the same standard, sections 5 and 9.</summary>
    [Theory]
    [MemberData(nameof(Values))]
    public void Translucent_pixels_mix_by_both_opacities(BlendMode mode, double backdrop, double source, double mixed)
    {
        const double AlphaBelow = 0.8;
        const double AlphaAbove = 0.4;
        var target = Fill(backdrop * AlphaBelow, AlphaBelow);

        Blenders.TryGet(mode)!.DrawOver(target, 0, Fill(source, AlphaAbove), 1);

        Assert.Equal((source * AlphaAbove * 0.2) + (backdrop * AlphaBelow * 0.6) + (AlphaAbove * AlphaBelow * mixed), target.Colors[0][0], 5);
        Assert.Equal(0.88, target.Alpha[0], 5);
    }

    [Theory]
    [MemberData(nameof(Values))]
    public void Clipped_pixels_colour_what_is_there_and_leave_its_opacity(BlendMode mode, double backdrop, double source, double mixed)
    {
        const double AlphaBelow = 0.5;
        const double AlphaAbove = 0.25;
        var target = Fill(backdrop * AlphaBelow, AlphaBelow);

        Blenders.TryGet(mode)!.DrawInside(target, 0, Fill(source, AlphaAbove), 1);

        Assert.Equal(AlphaBelow * ((0.75 * backdrop) + (0.25 * mixed)), target.Colors[0][0], 5);
        Assert.Equal(AlphaBelow, target.Alpha[0], 6);
    }

    [Theory]
    [MemberData(nameof(Modes))]
    public void On_nothing_every_mode_is_the_source_itself(BlendMode mode)
    {
        var target = Fill(0, 0);

        Blenders.TryGet(mode)!.DrawOver(target, 0, Fill(0.3, 0.5), 1);

        Assert.Equal(0.15, target.Colors[0][0], 6);
        Assert.Equal(0.5, target.Alpha[0], 6);
    }

    [Theory]
    [MemberData(nameof(Modes))]
    public void What_is_transparent_changes_no_bit(BlendMode mode)
    {
        var before = Fill(0.123456789 * 0.7, 0.7);
        var target = Fill(0.123456789 * 0.7, 0.7);
        var blender = Blenders.TryGet(mode)!;

        blender.DrawOver(target, 0, Fill(0.9, 0), 1);
        blender.DrawInside(target, 0, Fill(1, 0), 1);

        Assert.Equal(before.Colors[0], target.Colors[0]);
        Assert.Equal(before.Alpha, target.Alpha);
    }

    public static TheoryData<BlendMode> Modes => [.. Blenders.Supported];

    private static PixelRow Fill(double color, double alpha)
    {
        var row = new PixelRow(1, 0, 1);
        row.Colors[0][0] = (float)color;
        row.Alpha[0] = (float)alpha;
        return row;
    }
}
