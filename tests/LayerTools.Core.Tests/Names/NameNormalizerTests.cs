using LayerTools.Names;
using LayerTools.Profiles;
using Xunit;

namespace LayerTools.Tests.Names;

public class NameNormalizerTests
{
    /// <summary>Name, and what becomes of it by the shipped English and Japanese profiles; null where it is left. Invented names.</summary>
    public static TheoryData<string, string?, string?> Names => new()
    {
        { "bangs_L", "Hair front L", "左前髪" },
        { "前髪 先 左2", "Hair front 先 L 2", "左前髪先2" },
        { "HAIR_FRONT_TIP_R_02", "Hair front tip R 2", "右前髪tip2" },
        { "armSleeve copy 3", "Arm sleeve", "Arm袖" },
        { "boot cuff L", "Boot cuff L", "左Boot袖口" },
        { "scarf fringe", null, null },
        { "lantern cap", null, null },
        { "Layer 37", null, null },
        { "Zorp", null, null },
        { "Finger 2 joint 3", "Finger 2 joint 3", "指2_joint3" },
        { "Iris v2", "Iris v2", "瞳v2" },
        { "Eye L", "Eye L", "左目" },
    };

    [Theory]
    [MemberData(nameof(Names))]
    public void WritesTheProfilesForm(string name, string? english, string? japanese)
    {
        Assert.Equal(english, Write(name, LayerProfiles.Default.Naming));
        Assert.Equal(japanese, Write(name, LayerProfiles.FindShipped("figure-ja")!.Naming));
    }

    [Theory]
    [InlineData(NameCase.Sentence, " ", "Upper arm tip FX L 02")]
    [InlineData(NameCase.Title, "-", "Upper-Arm-Tip-FX-L-02")]
    [InlineData(NameCase.Lower, "_", "upper_arm_tip_fx_L_02")]
    [InlineData(NameCase.Upper, ".", "UPPER.ARM.TIP.FX.L.02")]
    [InlineData(NameCase.Pascal, " ", "UpperArmTipFxL02")]
    [InlineData(NameCase.Camel, " ", "upperArmTipFxL02")]
    public void WritesEachCase(NameCase style, string separator, string expected) =>
        Assert.Equal(expected, Write("upper arm Tip FX l 2", new NamingStyle { Vocabulary = Vocabulary.BuiltIn, Case = style, Separator = separator, NumberDigits = 2 }));

    [Fact]
    public void LeavesWhatWouldGetTooLong()
    {
        var style = LayerProfiles.Default.Naming with { LongestName = 13 };
        Assert.Equal("Upper lip L", Write("upper lip l", style));
        Assert.Null(Write("upper lip lng l", style));
        Assert.Contains("longer than 13", new NameNormalizer(style).Normalize("upper lip lng l", 1).Why, StringComparison.Ordinal);
    }

    private static string? Write(string name, NamingStyle style)
    {
        var normalizer = new NameNormalizer(style);
        var normal = normalizer.Normalize(name, 5);
        return normal.Form is null ? null : normalizer.Write(normal, normal.Form.Number);
    }
}
