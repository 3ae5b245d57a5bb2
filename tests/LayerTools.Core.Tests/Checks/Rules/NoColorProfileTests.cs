using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Checks.Rules;

public class NoColorProfileTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => [null];

    private protected override LayerFile CreateGood() => WithProfile([1, 2, 3]);

    private protected override LayerFile CreateBad() => WithProfile(null);

    [Fact]
    public void Files_of_other_colours_are_left_to_another_rule()
    {
        var file = WithProfile(null);
        file.ColorMode = ColorMode.Cmyk;

        Assert.Empty(Check(file));
    }

    private static LayerFile WithProfile(byte[]? profile)
    {
        var file = ModelBuilder.File();
        file.Detail = new StubFileDetail { Profile = profile };
        return file;
    }
}
