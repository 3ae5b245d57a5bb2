using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Checks.Rules;

public class NoCenterGuideTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => [null];

    private protected override LayerFile CreateGood() => With(new Guide(10, false), new Guide(50, true));

    private protected override LayerFile CreateBad() => With(new Guide(50, false), new Guide(10, true));

    [Fact]
    public void A_guide_close_by_is_left_to_another_rule() => Assert.Empty(Check(With(new Guide(50.5, true))));

    private static LayerFile With(params Guide[] guides)
    {
        var file = ModelBuilder.File("hero.psd", 100, 60);
        file.Guides = guides;
        return file;
    }
}
