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

    [Theory]
    [InlineData(6, 5, "6 of 11 parts have no mark.")]
    [InlineData(6, 6, null)]
    [InlineData(5, 0, null)]
    public void A_file_whose_parts_are_mostly_unmarked_is_told_once(int unmarked, int marked, string? message)
    {
        var file = File([.. Enumerable.Range(0, unmarked).Select(i => Pixel($"Arm {i}")), .. Enumerable.Range(0, marked).Select(i => Pixel($"Leg {i}", mark: Mark.Red))]);

        var findings = Check(file);

        Assert.Equal(message is null ? unmarked : 1, findings.Count);
        if (message is not null) Assert.Equal((message, null), (findings[0].Message, findings[0].LayerPath));
    }

    [Fact]
    public void Nobody_asks_where_marks_mean_nothing() => Assert.Empty(Check(CreateBad(), Profile with { Marks = new Dictionary<Mark, MarkMeaning>() }));
}
