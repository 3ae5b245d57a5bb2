using LayerTools.Model;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;
using static LayerTools.Tests.Support.Painting;

namespace LayerTools.Tests.Checks.Rules;

public class FaintPixelsWidenBoundsTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => ["Hat"];

    private protected override LayerFile CreateGood() => File(
        Of("Hat").Rectangle(10, 10, 30, 10, alpha: 7).Rectangle(10, 10, 20, 10).ToLayer(),
        Of("Button").Rectangle(10, 10, 12, 12, alpha: 7).Rectangle(14, 14, 4, 4).ToLayer(),
        Of("Mist").Rectangle(0, 0, 90, 50, alpha: 7).ToLayer(),
        Of("Sketch").Rectangle(0, 0, 90, 50, alpha: 7).Rectangle(14, 14, 4, 4).ToLayer());

    private protected override LayerFile CreateBad() => File(Of("Hat").Rectangle(10, 10, 20, 10).Rectangle(40, 29, 1, 1, alpha: 1).ToLayer());

    [Fact]
    public void How_much_is_told_in_per_cent_and_pixels()
    {
        var finding = Assert.Single(Check(CreateBad()));

        Assert.Equal(("210 %", "50 %"), (finding.Measured, finding.Limit));
        Assert.Contains("by up to 11 px, to 31 x 20 px from 20 x 10 px", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_limit_is_a_share() => Assert.Empty(Check(CreateBad(), limit: 210));
}
