using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Checks.Rules;

public class DeepNestingTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => ["A/B/C/D/E/Iris", "A/B/C/D/E/F"];

    private protected override LayerFile CreateGood() => File(Group("A", Group("B", Group("C", Group("D", Pixel("Iris"))))));

    private protected override LayerFile CreateBad() => File(Group("A", Group("B", Group("C", Group("D", Group("E", Pixel("Iris"), Group("F", Pixel("Deeper"))))))));

    [Fact]
    public void The_limit_is_counted_in_groups()
    {
        var finding = Check(CreateGood(), 3).Single();

        Assert.Equal(("A/B/C/D/Iris", "4 groups", "at most 3 groups"), (finding.LayerPath, finding.Measured, finding.Limit));
        Assert.Contains("| Move-Layer -After 'A/B/C/D' -LiteralLayerPath 'A/B/C/D/Iris' |", finding.Remedy, StringComparison.Ordinal);
        Assert.Empty(Check(CreateBad(), 6));
    }
}
