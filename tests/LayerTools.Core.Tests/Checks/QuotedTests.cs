using LayerTools.Checks;
using Xunit;

namespace LayerTools.Tests.Checks;

public class QuotedTests
{
    [Theory]
    [InlineData("Arm L", "'Arm L'")]
    [InlineData("", "''")]
    [InlineData("$(Get-Date) `n \"x\"", "'$(Get-Date) `n \"x\"'")]
    [InlineData("Nora's arm", "'Nora''s arm'")]
    // PowerShell ends a string at typographic quotes as well (about_Quoting_Rules).
    [InlineData("a\u2018b\u2019c\u201Ad\u201Be", "'a\u2018\u2018b\u2019\u2019c\u201A\u201Ad\u201B\u201Be'")]
    [InlineData("腕\U0001F3A8", "'腕\U0001F3A8'")]
    [InlineData("a\nb", "\"a$([char]0xA)b\"")]
    [InlineData("$x`\"\u201C\u201D\u201E'\t", "\"`$x```\"`\u201C`\u201D`\u201E'$([char]0x9)\"")]
    [InlineData("\u202Ereversed", "\"$([char]0x202E)reversed\"")]
    public void A_name_becomes_one_argument(string name, string argument) => Assert.Equal(argument, Quoted.Of(name));

    [Fact]
    public void Half_a_character_is_written_as_its_number() => Assert.Equal("\"a$([char]0xD83C)\U0001F3A8\"", Quoted.Of("a" + '\uD83C' + "\U0001F3A8"));
}
