using LayerTools.Profiles;
using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Checks.Rules;

public class UnmarkedPartTests : RuleTests
{
    private protected override LayerProfile Profile => base.Profile with { Marks = new Dictionary<Mark, MarkMeaning> { [Mark.Green] = MarkMeaning.Done, [Mark.Red] = MarkMeaning.Open } };

    private protected override IReadOnlyList<string?> BadPaths => ["Body/Arm"];

    private protected override LayerFile CreateGood() => File(Group("Body", Pixel("Arm", mark: Mark.Green)), Pixel("Sketch"));

    private protected override LayerFile CreateBad() => File(Group("Body", Pixel("Arm"), Pixel("Leg", mark: Mark.Red)));

    [Fact]
    public void The_remedy_says_that_the_part_is_open() => Assert.Contains("| Set-Layer -Mark Red -LiteralLayerPath 'Body/Arm' |", Check(CreateBad())[0].Remedy, StringComparison.Ordinal);

    [Fact]
    public void Nobody_asks_where_marks_mean_nothing() => Assert.Empty(Check(CreateBad(), Profile with { Marks = new Dictionary<Mark, MarkMeaning>() }));
}
