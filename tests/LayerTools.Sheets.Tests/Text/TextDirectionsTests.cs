using CsCheck;
using LayerTools.Sheets.Text;

namespace LayerTools.Sheets.Tests.Text;

/// <summary>Expected orders were worked out by hand with the rules of UAX #9. Capitals stand for Hebrew letters, as in its examples.</summary>
public class TextDirectionsTests
{
    [Theory]
    [InlineData("brow left", "brow left")]
    [InlineData("ABC", "<ABC>")]
    [InlineData("ABC DEF", "<ABC DEF>")]
    [InlineData("head/ABC", "head/|<ABC>")]
    [InlineData("head/ABC/eye", "head/|<ABC>|/eye")]
    [InlineData("a ABC 12 b", "a |12|<ABC >| b")]
    [InlineData("ABC 12", "12|<ABC >")]
    [InlineData("ABC left", "left|<ABC >")]
    [InlineData("ABC left 12", "left 12|<ABC >")]
    [InlineData("12 ABC", "< ABC>|12")]
    [InlineData("a (ABC) b", "a (|<ABC>|) b")]
    [InlineData("", "")]
    public void Runs_stand_in_the_order_of_the_line(string text, string expected)
    {
        var runs = TextDirections.Split(ToHebrew(text));
        Assert.Equal(expected, ToCapitals(string.Join("|", runs.Select(run => run.IsRightToLeft ? $"<{run.Text}>" : run.Text))));
    }

    [Fact]
    public void No_character_is_lost() => Gen.Char["aB1 (ز髪-"].Array[0, 20].Sample(units =>
    {
        var text = ToHebrew(new string(units));
        Assert.Equal(text.Order(), string.Concat(TextDirections.Split(text).Select(run => run.Text)).Order());
    });

    private static string ToHebrew(string text) => string.Concat(text.Select(unit => unit is >= 'A' and <= 'Z' ? (char)(unit - 'A' + '\u05D0') : unit));

    private static string ToCapitals(string text) => string.Concat(text.Select(unit => unit is >= '\u05D0' and <= '\u05EA' ? (char)(unit - '\u05D0' + 'A') : unit));
}
