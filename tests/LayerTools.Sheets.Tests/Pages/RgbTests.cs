using LayerTools.Sheets.Pages;

namespace LayerTools.Sheets.Tests.Pages;

public class RgbTests
{
    [Theory]
    [InlineData("#777777", 0x777777)]
    [InlineData("#0aF05c", 0x0AF05C)]
    [InlineData("#000000", 0)]
    public void Hex_is_read(string text, int number)
    {
        Assert.True(Rgb.TryParseHex(text, out var color));
        Assert.Equal(Rgb.FromNumber(number), color);
    }

    [Theory]
    [InlineData("777777")]
    [InlineData("#77777")]
    [InlineData("#7777777")]
    [InlineData("##77777")]
    [InlineData("#77777g")]
    [InlineData("# 77777")]
    [InlineData("#-77777")]
    [InlineData("")]
    public void Anything_else_is_not(string text) => Assert.False(Rgb.TryParseHex(text, out _));
}
