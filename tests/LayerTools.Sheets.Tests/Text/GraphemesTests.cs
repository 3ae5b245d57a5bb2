using LayerTools.Sheets.Text;

namespace LayerTools.Sheets.Tests.Text;

public class GraphemesTests
{
    [Theory]
    [InlineData("", 0)]
    [InlineData("Brow L", 6)]
    [InlineData("前髪", 2)]
    [InlineData("e\u0301", 1)]
    [InlineData("\U0001F469\u200D\U0001F3A8", 1)]
    [InlineData("\U0001F44D\U0001F3FD!", 2)]
    [InlineData("\u2764\uFE0F", 1)]
    [InlineData("\U0001F1EF\U0001F1F5\U0001F1EB\U0001F1F7", 2)]
    [InlineData("\U0001F3F4\U000E0067\U000E0062\U000E007F", 1)]
    public void What_a_reader_sees_as_one_is_one(string text, int count)
    {
        var clusters = Graphemes.Split(text);
        Assert.Equal(count, clusters.Count);
        Assert.Equal(text, string.Concat(clusters));
    }

    [Fact]
    public void Lone_surrogates_do_no_harm() => Assert.Equal([0xD83D, 'a'], Graphemes.CodePoints("\uD83Da"));
}
