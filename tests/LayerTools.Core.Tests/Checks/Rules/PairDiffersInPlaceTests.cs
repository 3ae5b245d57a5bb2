using LayerTools.Edits;
using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;
using static LayerTools.Tests.Support.Painting;

namespace LayerTools.Tests.Checks.Rules;

public class PairDiffersInPlaceTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => ["Eye L"];

    private protected override LayerFile CreateGood() => File(
        Of("Eye L").Rectangle(61, 11, 8, 6).ToLayer(),
        Of("Eye R").Rectangle(30, 10, 8, 6).ToLayer(),
        Of("Arm L").Rectangle(70, 20, 8, 20).ToLayer(),
        Of("Arm R").Rectangle(10, 20, 14, 16).ToLayer(),
        Of("Hand L").Rectangle(80, 40, 8, 8).ToLayer(),
        Of("Hand R").Rectangle(18, 40, 8, 8).ToLayer());

    private protected override LayerFile CreateBad() => File(Of("Eye L").Rectangle(64, 13, 8, 6).ToLayer(), Of("Eye R").Rectangle(30, 10, 8, 6).ToLayer());

    [Fact]
    public void Distance_and_directions_are_told()
    {
        var finding = Assert.Single(Check(CreateBad()));

        Assert.Equal(("3.6 px", "2 px"), (finding.Measured, finding.Limit));
        Assert.Contains("3.6 px from where the reflection of Eye R would be: +2 px across, +3 px down.", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_remedy_puts_it_right()
    {
        var file = CreateBad();

        new MirrorEdit { From = Side.Left, Existing = MirrorExisting.Replace }.Plan(file, [file.Find("Eye L")]).Apply();

        Assert.Empty(Check(file));
    }

    [Fact]
    public void A_figure_that_is_off_centre_as_a_whole_is_not_told_pair_by_pair() => Assert.Empty(Check(File(
        Of("Eye L").Rectangle(67, 10, 8, 6).ToLayer(),
        Of("Eye R").Rectangle(35, 10, 8, 6).ToLayer(),
        Of("Head").Rectangle(25, 5, 60, 20).ToLayer(),
        Of("Body").Rectangle(35, 30, 40, 20).ToLayer(),
        Of("Neck").Rectangle(50, 20, 10, 12).ToLayer())));

    [Fact]
    public void The_limit_is_a_distance() => Assert.Empty(Check(CreateBad(), limit: 4));
}
