using LayerTools.Sheets.Tests.Support;
using LayerTools.Sheets.Text;

namespace LayerTools.Sheets.Tests.Text;

public class LineBreakerTests
{
    private static readonly TextStyle Style = new(2, 3);

    [Theory]
    [InlineData("one two three", 20, 9, "one two three")]
    [InlineData("one two three", 7, 9, "one two|three")]
    [InlineData("one  two", 3, 9, "one|two")]
    [InlineData("one two three", 5, 2, "one|two…")]
    [InlineData("extraordinary", 5, 2, "ex…ry")]
    [InlineData("", 5, 2, "")]
    public void Lines_break_at_spaces(string text, double width, int limit, string expected) =>
        Assert.Equal(expected, string.Join("|", LineBreaker.Break(text, Style, width, limit, new FakeRuler())));
}
