using ImageMagick;
using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Checks.Rules;

public class ForeignColorProfileTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => [null];

    private protected override LayerFile CreateGood() => WithProfile(ColorProfiles.SRGB.ToByteArray());

    private protected override LayerFile CreateBad() => WithProfile(ColorProfiles.ColorMatchRGB.ToByteArray());

    [Fact]
    public void A_file_without_a_profile_is_left_to_another_rule() => Assert.Empty(Check(WithProfile(null)));

    [Fact]
    public void A_damaged_profile_is_told_as_such()
    {
        var bytes = ColorProfiles.ColorMatchRGB.ToByteArray()!;
        for (var length = 0; length < bytes.Length; length += 5) Assert.Single(Check(WithProfile(bytes[..length])));

        Assert.Equal("a profile without a readable description", Assert.Single(Check(WithProfile([1, 2, 3]))).Measured);
    }

    private static LayerFile WithProfile(byte[]? profile)
    {
        var file = ModelBuilder.File();
        file.Detail = new StubFileDetail { Profile = profile };
        return file;
    }
}
