using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Checks.Rules;

public class GuideOffAxisTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => [null];

    private protected override LayerFile CreateGood() => With(1000, new Guide(500, true), new Guide(503, true), new Guide(503, false));

    private protected override LayerFile CreateBad() => With(1000, new Guide(490, true), new Guide(503, true), new Guide(500, false));

    [Fact]
    public void The_nearest_guide_is_meant()
    {
        var finding = Assert.Single(Check(CreateBad()));

        Assert.Equal(("x = 503 px", "x = 500 px"), (finding.Measured, finding.Limit));
    }

    [Theory]
    [InlineData(490, 1, true)]
    [InlineData(489.96875, 1, false)]
    [InlineData(489.96875, 2, true)]
    public void The_limit_is_in_per_cent_of_the_width(double x, double limit, bool found) => Assert.Equal(found, Check(With(1000, new Guide(x, true)), limit).Count == 1);

    [Fact]
    public void An_odd_width_has_its_line_at_half_a_pixel()
    {
        Assert.Empty(Check(With(1001, new Guide(500.5, true))));
        Assert.Equal("x = 500.5 px", Assert.Single(Check(With(1001, new Guide(500, true)))).Limit);
    }

    private static LayerFile With(int width, params Guide[] guides)
    {
        var file = ModelBuilder.File("hero.psd", width, 60);
        file.Guides = guides;
        return file;
    }
}
