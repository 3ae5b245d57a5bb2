using CsCheck;
using LayerTools.Sheets.Tests.Support;
using LayerTools.Sheets.Text;

namespace LayerTools.Sheets.Tests.Text;

public class MiddleShortenerTests
{
    private static readonly string[] Pieces = ["a", "\u0301", "\U0001F44D\U0001F3FD", "髪", " "];
    private static readonly TextStyle Style = new(2, 3);

    [Theory]
    [InlineData("Hair front 12", 13, "Hair front 12")]
    [InlineData("Hair front 12", 9, "Hair…t 12")]
    [InlineData("Hair front 12", 8, "Hair…12")]
    [InlineData("Hair front 12", 1, "…")]
    [InlineData("Hair front 12", 0, "…")]
    [InlineData("前髪前髪前髪", 3, "前…髪")]
    [InlineData("\U0001F469\u200D\U0001F3A8\U0001F469\u200D\U0001F3A8\U0001F469\u200D\U0001F3A8", 2, "\U0001F469\u200D\U0001F3A8…")]
    public void Both_ends_stay(string text, double width, string expected) => Assert.Equal(expected, MiddleShortener.Fit(text, Style, width, new FakeRuler()));

    [Fact]
    public void What_is_shortened_fits_and_is_made_of_whole_characters() => Gen.Select(Gen.Int[0, 4].Select(i => Pieces[i]).Array[0, 60], Gen.Int[1, 40]).Sample((pieces, width) =>
    {
        var text = string.Concat(pieces);
        var shown = MiddleShortener.Fit(text, Style, width, new FakeRuler());
        Assert.True(new FakeRuler().Measure(shown, Style) <= width);
        var ends = shown == text ? [text] : shown.Split('…');
        Assert.StartsWith(ends[0], text, StringComparison.Ordinal);
        Assert.EndsWith(ends[^1], text, StringComparison.Ordinal);
    });
}
