using LayerTools.Pixels.Colors;
using Xunit;

namespace LayerTools.Tests.Pixels.Colors;

/// <summary>L*a*b* relative to D50 of the corners of sRGB, as any calculator that follows CIE 15 and the Bradford matrix gives them (from memory, to two places).</summary>
public class LabColorTests
{
    [Theory]
    [InlineData(100, 0, 0, 255, 255, 255)]
    [InlineData(0, 0, 0, 0, 0, 0)]
    [InlineData(53.59, 0, 0, 128, 128, 128)]
    [InlineData(54.29, 80.81, 69.89, 255, 0, 0)]
    [InlineData(87.82, -79.29, 80.99, 0, 255, 0)]
    [InlineData(29.57, 68.30, -112.03, 0, 0, 255)]
    [InlineData(97.61, -15.75, 93.39, 255, 255, 0)]
    [InlineData(90.67, -50.67, -14.96, 0, 255, 255)]
    [InlineData(60.17, 93.55, -60.50, 255, 0, 255)]
    public void Known_colours_come_out(double lightness, double a, double b, int red, int green, int blue)
    {
        var color = LabColor.ToRgb(lightness, a, b);
        Assert.Equal((red, green, blue), ((int)Math.Round(255 * color.Red), (int)Math.Round(255 * color.Green), (int)Math.Round(255 * color.Blue)));
    }

    [Fact]
    public void Colours_that_sRGB_does_not_have_are_cut_off()
    {
        var color = LabColor.ToRgb(50, -128, 127);
        Assert.Equal((0.0, 0.0), (color.Red, color.Blue));
    }
}
