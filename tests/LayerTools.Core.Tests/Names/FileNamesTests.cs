using System.Text;
using LayerTools.Names;
using Xunit;

namespace LayerTools.Tests.Names;

public class FileNamesTests
{
    [Theory]
    [InlineData("Arm L", "Arm L")]
    [InlineData("前髪", "前髪")]
    [InlineData("Glanz \U0001F31F", "Glanz \U0001F31F")]
    [InlineData("a<b>c:d\"e/f\\g|h?i*j", "a_b_c_d_e_f_g_h_i_j")]
    [InlineData("tab\tline\nzero\0delete\u007Fnext\u0085", "tab_line_zero_delete_next_")]
    [InlineData("turned\u202Egnp", "turned_gnp")]
    [InlineData("  Arm L . . ", "Arm L")]
    [InlineData("...", "unnamed")]
    [InlineData("", "unnamed")]
    [InlineData(".hidden", "_.hidden")]
    [InlineData("CON", "_CON")]
    [InlineData("con.old", "_con.old")]
    [InlineData("Lpt9 .x", "_Lpt9 .x")]
    [InlineData("COM\u00B9", "_COM\u00B9")]
    [InlineData("CONE", "CONE")]
    [InlineData("COM10", "COM10")]
    public void Names_become_names_that_every_system_takes(string name, string expected) => Assert.Equal(expected, FileNames.MakeSafe(name));

    [Fact]
    public void Half_a_surrogate_pair_is_no_character() => Assert.Equal("a_b_", FileNames.MakeSafe($"a{'\uD83D'}b{'\uDC68'}"));

    [Fact]
    public void Long_names_are_cut_between_characters()
    {
        // Four joined signs that readers see as one character of 25 bytes; four of these fill 100 of 120 bytes, and half of the fifth would fit.
        const string Family = "\U0001F468\u200D\U0001F469\u200D\U0001F467\u200D\U0001F466";

        Assert.Equal(string.Concat(Enumerable.Repeat(Family, 4)), FileNames.MakeSafe(string.Concat(Enumerable.Repeat(Family, 12))));
        Assert.Equal(FileNames.LongestBytes, Encoding.UTF8.GetByteCount(FileNames.MakeSafe(new string('髪', 300))));
        Assert.Equal("a", FileNames.MakeSafe("a" + new string(' ', 150) + "b"));
    }

    [Theory]
    [InlineData("Arm L", "ARM l")]
    [InlineData("\u00C9ar", "E\u0301ar")]
    [InlineData("i", "I")]
    public void Names_that_a_disk_may_take_for_one_have_one_key(string one, string other) => Assert.Equal(FileNames.ToKey(one), FileNames.ToKey(other));
}
