using LayerTools.Model;
using LayerTools.Profiles;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Checks.Rules;

public class PpiOffProfileTests : RuleTests
{
    private protected override LayerProfile Profile => base.Profile with { Canvas = new CanvasProfile { Ppi = 300 } };

    private protected override IReadOnlyList<string?> BadPaths => [null];

    private protected override LayerFile CreateGood() => WithPpi(300.004);

    private protected override LayerFile CreateBad() => WithPpi(299.9);

    [Fact]
    public void A_file_that_says_nothing_is_found_too() => Assert.Equal("not said", Assert.Single(Check(WithPpi(null))).Measured);

    [Fact]
    public void A_profile_that_names_none_asks_nothing() => Assert.Empty(Check(WithPpi(7), base.Profile));

    private static LayerFile WithPpi(double? ppi)
    {
        var file = ModelBuilder.File();
        file.Ppi = ppi;
        return file;
    }
}
