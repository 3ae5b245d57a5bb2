using LayerTools.Model;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;
using static LayerTools.Tests.Support.Painting;

namespace LayerTools.Tests.Checks.Rules;

public class StrayIslandsTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => ["Cape"];

    private protected override LayerFile CreateGood() => File(
        Of("Cape").Rectangle(10, 10, 40, 40).Rectangle(57, 20, 3, 3).Rectangle(70, 10, 5, 13).ToLayer(),
        Of("Freckles").Rectangle(10, 10, 3, 3).Rectangle(30, 10, 3, 3).Rectangle(50, 10, 3, 3).ToLayer(),
        Of("Sketch").Rectangle(10, 10, 40, 40).Rectangle(70, 20, 1, 1).ToLayer());

    private protected override LayerFile CreateBad() => File(Of("Cape").Rectangle(10, 10, 40, 40).Rectangle(58, 20, 3, 3).Rectangle(62, 20, 2, 1).Rectangle(57, 45, 1, 1).ToLayer());

    [Fact]
    public void Specks_do_not_keep_each_other_company()
    {
        var finding = Assert.Single(Check(CreateBad()));

        Assert.Contains("2 specks lie apart from the rest, at x 58 y 20, x 62 y 20.", finding.Message, StringComparison.Ordinal);
        Assert.Equal("9 px² the largest", finding.Measured);
    }

    [Fact]
    public void What_is_larger_than_the_limit_keeps_specks_company() => Assert.Empty(Check(CreateBad(), limit: 8));

    [Fact]
    public void A_small_part_has_no_specks() => Assert.Empty(Check(File(Of("Dots").Rectangle(10, 10, 10, 10).Rectangle(50, 10, 2, 1).ToLayer())));
}
