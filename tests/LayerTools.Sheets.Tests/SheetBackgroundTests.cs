namespace LayerTools.Sheets.Tests;

public class SheetBackgroundTests
{
    [Theory]
    [InlineData("grey", "#777777")]
    [InlineData("GRAY", "#777777")]
    [InlineData("#777777", "#777777")]
    [InlineData("#FFFFFF", "#ffffff")]
    [InlineData("Checker", "checker")]
    [InlineData("HALVES", "halves")]
    [InlineData("#fff", "#ffffff")]
    [InlineData("#A0c", "#aa00cc")]
    public void Words_and_colours_are_read(string text, string expected) => Assert.Equal(expected, SheetBackground.Parse(text).ToString());

    [Theory]
    [InlineData("")]
    [InlineData("mauve")]
    [InlineData("#ffff")]
    [InlineData("fff")]
    [InlineData("#ggg")]
    public void Others_are_refused_with_what_is_possible(string text)
    {
        var error = Assert.Throws<SheetException>(() => SheetBackground.Parse(text));
        Assert.Contains("grey, checker", error.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Equal_backgrounds_are_equal()
    {
        Assert.Equal(SheetBackground.Grey, SheetBackground.Parse("#777777"));
        Assert.Equal(SheetBackground.Grey.GetHashCode(), SheetBackground.Parse("#777777").GetHashCode());
        Assert.NotEqual(SheetBackground.Grey, SheetBackground.Checker);
    }
}
