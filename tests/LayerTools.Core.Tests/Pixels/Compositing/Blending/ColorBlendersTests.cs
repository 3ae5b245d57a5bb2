using System.Globalization;
using LayerTools.Model;
using LayerTools.Pixels.Compositing;
using LayerTools.Pixels.Compositing.Blending;
using Xunit;

namespace LayerTools.Tests.Pixels.Compositing.Blending;

public class ColorBlendersTests
{
    /// <summary>
    /// Mode, Cb, Cs and B(Cb, Cs), worked out by hand from W3C Compositing and Blending Level 1, section 9.2. With Cb = (0.2, 0.4, 0.8): Lum = 0.384, Sat = 0.6.
    /// With Cs = (0.9, 0.5, 0.3): Lum = 0.598, Sat = 0.6.
    /// </summary>
    public static TheoryData<BlendMode, string, string, string> Values => new()
    {
        // SetSat gives (0.6, 0.2, 0), of Lum 0.298; 0.086 more reaches 0.384.
        { BlendMode.Hue, "0.2 0.4 0.8", "0.9 0.5 0.3", "0.686 0.286 0.086" },
        { BlendMode.Hue, "0.2 0.4 0.8", "0.5 0.5 0.5", "0.384 0.384 0.384" },
        // Red of saturation 1 is (1, 0, 0), Lum 0.3; with Lum 0.9 it is (1.6, 0.6, 0.6), clipped by (1 - 0.9) / (1.6 - 0.9) = 1/7.
        { BlendMode.Color, "0.9 0.9 0.9", "1 0 0", "1 0.857143 0.857143" },
        // With Lum 0.1 it is (0.8, -0.2, -0.2), clipped by 0.1 / (0.1 + 0.2) = 1/3.
        { BlendMode.Color, "0.1 0.1 0.1", "1 0 0", "0.333333 0 0" },
        { BlendMode.Color, "0.2 0.4 0.8", "0.9 0.5 0.3", "0.686 0.286 0.086" },
        // Backdrop at saturation 0 is black, then grey of its own luminosity.
        { BlendMode.Saturation, "0.2 0.4 0.8", "0.5 0.5 0.5", "0.384 0.384 0.384" },
        { BlendMode.Saturation, "0.2 0.4 0.8", "0.9 0.5 0.3", "0.2 0.4 0.8" },
        // SetSat(Cb, 0.3) = (0, 0.1, 0.3), Lum 0.092; 0.292 more.
        { BlendMode.Saturation, "0.2 0.4 0.8", "0.3 0.3 0.6", "0.292 0.392 0.592" },
        { BlendMode.Saturation, "0.4 0.4 0.4", "1 0 0", "0.4 0.4 0.4" },
        { BlendMode.Luminosity, "0.2 0.4 0.8", "0.5 0.5 0.5", "0.316 0.516 0.916" },
        // 0.214 more is (0.414, 0.614, 1.014), clipped by (1 - 0.598) / (1.014 - 0.598) = 0.966346.
        { BlendMode.Luminosity, "0.2 0.4 0.8", "0.9 0.5 0.3", "0.420192 0.613462 1" },
        { BlendMode.DarkerColor, "0.2 0.4 0.8", "0.9 0.5 0.3", "0.2 0.4 0.8" },
        { BlendMode.DarkerColor, "0.9 0.5 0.3", "0.2 0.4 0.8", "0.2 0.4 0.8" },
        { BlendMode.LighterColor, "0.2 0.4 0.8", "0.9 0.5 0.3", "0.9 0.5 0.3" },
        { BlendMode.LighterColor, "0.9 0.5 0.3", "0.2 0.4 0.8", "0.9 0.5 0.3" },
    };

    [Theory]
    [MemberData(nameof(Values))]
    public void Opaque_colours_mix_as_the_standard_says(BlendMode mode, string backdrop, string source, string expected)
    {
        var target = Fill(backdrop, 1);

        Blenders.TryGet(mode)!.DrawOver(target, 0, Fill(source, 1), 1);

        Assert.All(Parse(expected).Zip(target.Colors), pair => Assert.Equal(pair.First, pair.Second[0], 5));
    }

    [Theory]
    [MemberData(nameof(Values))]
    public void Translucent_colours_mix_by_both_opacities(BlendMode mode, string backdrop, string source, string mixed)
    {
        var over = Fill(backdrop, 0.8);
        var inside = Fill(backdrop, 0.8);

        Blenders.TryGet(mode)!.DrawOver(over, 0, Fill(source, 0.4, premultiplied: false), 1);
        Blenders.TryGet(mode)!.DrawInside(inside, 0, Fill(source, 0.4, premultiplied: false), 1);

        for (var channel = 0; channel < 3; channel++)
        {
            var (below, above, both) = (Parse(backdrop)[channel], Parse(source)[channel], Parse(mixed)[channel]);
            Assert.Equal((above * 0.4 * 0.2) + (below * 0.8 * 0.6) + (0.32 * both), over.Colors[channel][0], 5);
            Assert.Equal(0.8 * ((0.6 * below) + (0.4 * both)), inside.Colors[channel][0], 5);
        }

        Assert.Equal((0.88f, 0.8f), (over.Alpha[0], inside.Alpha[0]));
    }

    [Theory]
    [InlineData(BlendMode.Hue, 0.3)]
    [InlineData(BlendMode.Saturation, 0.3)]
    [InlineData(BlendMode.Color, 0.3)]
    [InlineData(BlendMode.Luminosity, 0.6)]
    [InlineData(BlendMode.DarkerColor, 0.3)]
    [InlineData(BlendMode.LighterColor, 0.6)]
    public void Greys_have_luminosity_alone(BlendMode mode, double expected)
    {
        var target = FillGrey(0.3);

        Blenders.TryGet(mode)!.DrawOver(target, 0, FillGrey(0.6), 1);

        Assert.Equal(expected, target.Colors[0][0], 5);
    }

    [Fact]
    public void Together_with_the_table_of_separable_modes_every_mode_has_values() =>
        Assert.Equal(Blenders.Supported.Order(), BlendersTests.Values.Select(row => row.Data.Item1).Concat(Values.Select(row => row.Data.Item1)).Distinct().Order());

    private static double[] Parse(string color) => [.. color.Split(' ').Select(part => double.Parse(part, CultureInfo.InvariantCulture))];

    private static PixelRow Fill(string color, double alpha, bool premultiplied = true)
    {
        var row = new PixelRow(3, 0, 1);
        for (var channel = 0; channel < 3; channel++) row.Colors[channel][0] = (float)(Parse(color)[channel] * (premultiplied ? alpha : 1));
        row.Alpha[0] = (float)alpha;
        return row;
    }

    private static PixelRow FillGrey(double grey)
    {
        var row = new PixelRow(1, 0, 1);
        row.Colors[0][0] = (float)grey;
        row.Alpha[0] = 1;
        return row;
    }
}
