using LayerTools.Sheets.Pages;

namespace LayerTools.Sheets.Tests.Pages;

public class ContrastTests
{
    // Extremes follow from the definition in WCAG 2.2 ('contrast ratio'): (1 + 0.05) / (0 + 0.05).
    [Fact]
    public void Black_on_white_is_21_and_nothing_is_1()
    {
        Assert.Equal(21, Contrast.Ratio(Rgb.Black, Rgb.White), 10);
        Assert.Equal(1, Contrast.Ratio(Rgb.White, Rgb.White), 10);
    }

    // #767676 is the lightest grey with 4.5:1 on white (W3C, Understanding SC 1.4.3); one step lighter falls short.
    [Fact]
    public void The_known_grey_at_the_limit_is_at_the_limit()
    {
        Assert.True(Contrast.Ratio(Rgb.FromNumber(0x767676), Rgb.White) >= Contrast.Minimum);
        Assert.True(Contrast.Ratio(Rgb.FromNumber(0x777777), Rgb.White) < Contrast.Minimum);
    }

    [Fact]
    public void Ink_can_be_read_on_every_grey()
    {
        for (var value = 0; value < 256; value++)
        {
            var background = new Rgb((byte)value, (byte)value, (byte)value);
            Assert.True(Contrast.Ratio(Contrast.ChooseInk(background), background) >= Contrast.Minimum, background.ToString());
        }
    }
}
