using LayerTools.Edits;
using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;
using static LayerTools.Tests.Support.Painting;

namespace LayerTools.Tests.Checks.Rules;

public class PairDiffersInSizeTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => ["Hand L"];

    private protected override LayerFile CreateGood() => File(
        Of("Hand L").Rectangle(70, 20, 20, 10).ToLayer(),
        Of("Eye R").Rectangle(10, 10, 4, 4).ToLayer(),
        Of("Eye L").Rectangle(60, 10, 4, 5).ToLayer(),
        Of("Hand R").Rectangle(10, 20, 10, 19).ToLayer(),
        Of("Foot L").Rectangle(60, 50, 10, 5).ToLayer(),
        Of("Foot R").Rectangle(20, 50, 10, 5, alpha: 5).ToLayer());

    private protected override LayerFile CreateBad() => File(Of("Hand L").Rectangle(70, 20, 20, 18).ToLayer(), Of("Hand R").Rectangle(10, 20, 20, 20).ToLayer());

    [Fact]
    public void The_square_roots_of_the_areas_are_compared()
    {
        var finding = Assert.Single(Check(CreateBad()));

        // 1 − √0.9
        Assert.Equal(("5.1 %", "5 %"), (finding.Measured, finding.Limit));
        Assert.Contains("5.1 % smaller than its opposite Hand R: 20 x 18 px and 20 x 20 px.", finding.Message, StringComparison.Ordinal);
        Assert.Contains("| Copy-LayerMirror -From Left -Existing Replace -LiteralLayerPath 'Hand L' |", finding.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void The_front_part_is_told_and_the_left_one_copied()
    {
        var finding = Assert.Single(Check(File(Of("Hand R").Rectangle(10, 20, 20, 20).ToLayer(), Of("Hand L").Rectangle(70, 20, 20, 10).ToLayer())));

        Assert.Equal("Hand R", finding.LayerPath);
        Assert.Contains("29.3 % larger", finding.Message, StringComparison.Ordinal);
        Assert.Contains("-LiteralLayerPath 'Hand L'", finding.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void The_remedy_puts_it_right()
    {
        var file = CreateBad();

        new MirrorEdit { From = Side.Left, Existing = MirrorExisting.Replace }.Plan(file, [file.Find("Hand L")]).Apply();

        Assert.Empty(Check(file));
    }

    [Fact]
    public void The_limit_is_a_share() => Assert.Empty(Check(CreateBad(), limit: 6));
}
