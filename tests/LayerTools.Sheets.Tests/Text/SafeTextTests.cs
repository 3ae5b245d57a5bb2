using CsCheck;
using LayerTools.Sheets.Text;

namespace LayerTools.Sheets.Tests.Text;

public class SafeTextTests
{
    [Theory]
    [InlineData("Brow L", "Brow L")]
    [InlineData("前髪 左", "前髪 左")]
    [InlineData("a\nb\tc\0", "a\uFFFDb\uFFFDc\uFFFD")]
    [InlineData("a\u2028b\u2029c\u0085", "a\uFFFDb\uFFFDc\uFFFD")]
    [InlineData("L\u202Etxt.psd\u202C", "L\uFFFDtxt.psd\uFFFD")]
    [InlineData("\u2066a\u2069\u200F\uFEFF", "\uFFFDa\uFFFD\uFFFD\uFFFD")]
    [InlineData("\U0001F469\u200D\U0001F3A8 \u2764\uFE0F", "\U0001F469\u200D\U0001F3A8 \u2764\uFE0F")]
    [InlineData("\u0646\u200C\u0627", "\u0646\u200C\u0627")]
    public void Commands_become_visible_signs_and_letters_stay(string text, string expected) => Assert.Equal(expected, SafeText.Clean(text));

    [Fact]
    public void Half_a_character_becomes_a_visible_sign() => Assert.Equal("half \uFFFD", SafeText.Clean("half \uD83D"));

    [Fact]
    public void Piles_of_accents_are_cut_to_four() => Assert.Equal("Z\u0301\u0301\u0301\u0301a", SafeText.Clean("Z" + new string('\u0301', 60) + "a"));

    [Fact]
    public void Whatever_comes_in_is_one_well_formed_line_without_commands() => Gen.Char.Array[0, 40].Sample(units =>
    {
        var clean = SafeText.Clean(new string(units));
        Assert.DoesNotContain(clean, char.IsControl);
        Assert.DoesNotContain(clean, unit => unit is '\u2028' or '\u2029' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069'));
        Assert.Equal(clean, System.Text.Encoding.UTF8.GetString(System.Text.Encoding.UTF8.GetBytes(clean)));
        Assert.Equal(clean, SafeText.Clean(clean));
    });
}
