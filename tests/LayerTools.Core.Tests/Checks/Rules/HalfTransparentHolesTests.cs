using LayerTools.Model;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;
using static LayerTools.Tests.Support.Painting;

namespace LayerTools.Tests.Checks.Rules;

public class HalfTransparentHolesTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => ["Coat"];

    private protected override LayerFile CreateGood() => File(
        Of("Coat").Rectangle(10, 10, 80, 40).Rectangle(20, 20, 5, 3, alpha: 100).Rectangle(40, 20, 9, 9, alpha: 230).Rectangle(60, 20, 9, 9, alpha: 100).Rectangle(64, 24, 1, 1, alpha: 0).ToLayer(),
        Of("Veil").Rectangle(10, 10, 80, 40, alpha: 100).ToLayer(),
        Of("Sketch").Rectangle(10, 10, 80, 40).Rectangle(20, 20, 5, 5, alpha: 100).ToLayer());

    private protected override LayerFile CreateBad() => File(
        Of("Coat").Rectangle(10, 10, 80, 40).Rectangle(20, 20, 4, 4, alpha: 229).Rectangle(40, 20, 5, 4, alpha: 8).Rectangle(60, 20, 3, 3, alpha: 100).ToLayer());

    [Fact]
    public void The_largest_is_measured_and_the_places_are_named()
    {
        var finding = Assert.Single(Check(CreateBad()));

        Assert.Equal(("20 px² the largest", "less than 16 px²"), (finding.Measured, finding.Limit));
        Assert.Contains("2 half-transparent spots, at x 40 y 20, x 20 y 20.", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_many_spots_the_first_three_are_named()
    {
        var coat = Of("Coat").Rectangle(0, 0, 100, 60);
        for (var i = 0; i < 5; i++) coat.Rectangle(10 + (10 * i), 20, 4, 4, alpha: 100);

        Assert.Contains("x 10 y 20, x 20 y 20, x 30 y 20 and 2 more", Assert.Single(Check(File(coat.ToLayer()))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Smaller_spots_count_where_the_profile_says_so() => Assert.Contains("3 half-", Assert.Single(Check(CreateBad(), limit: 9)).Message, StringComparison.Ordinal);
}
