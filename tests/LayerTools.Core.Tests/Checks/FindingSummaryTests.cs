using LayerTools.Checks;
using LayerTools.Profiles;
using Xunit;

namespace LayerTools.Tests.Checks;

public class FindingSummaryTests
{
    [Fact]
    public void The_worst_come_first_then_the_most_frequent()
    {
        var sums = FindingSummary.Of([Note("UnmarkedPart", "A"), Note("HiddenLayer", "A"), Note("HiddenLayer", "B"), Note("OddCanvasWidth", null) with { Severity = Severity.Error }], LayerProfiles.Default);

        Assert.Equal([("OddCanvasWidth", 1), ("HiddenLayer", 2), ("UnmarkedPart", 1)], sums.Select(sum => (sum.Rule, sum.Count)));
        Assert.Equal([null, "A, B", "A"], sums.Select(sum => sum.Layers));
    }

    [Theory]
    [InlineData(3, "L1, L2, L3")]
    [InlineData(4, "L1, L2, L3 and 1 more")]
    public void A_few_layers_are_named(int count, string layers) =>
        Assert.Equal(layers, FindingSummary.Of([.. Enumerable.Range(1, count).Select(i => Note("HiddenLayer", $"L{i}"))], LayerProfiles.Default).Single().Layers);

    [Fact]
    public void A_remedy_that_is_the_same_for_all_is_kept_and_others_are_shown_by_a_command()
    {
        var alike = FindingSummary.Of([Note("HiddenLayer", "A"), Note("HiddenLayer", "B")], LayerProfiles.Default).Single();
        var differing = FindingSummary.Of([Note("HiddenLayer", "A"), Note("HiddenLayer", "B") with { Remedy = "other" }], LayerProfiles.Default).Single();

        Assert.Equal("do it", alike.Remedy);
        Assert.Equal("Test-LayerFile -LiteralPath 'it''s.psd' -Rule HiddenLayer | Format-List LayerPath, Message, Remedy", differing.Remedy);
        Assert.Equal("A layer is hidden.", differing.Message);
    }

    private static Finding Note(string rule, string? layer) =>
        new() { Severity = Severity.Note, Rule = rule, LayerPath = layer, Message = "Something.", Remedy = "do it", FilePath = "it's.psd" };
}
