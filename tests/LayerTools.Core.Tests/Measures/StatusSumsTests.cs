using LayerTools.Measures;
using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Measures;

public class StatusSumsTests
{
    private static LayerFile Marked() => File("marked.psd", 100, 60,
        Group("Arm L", Pixel("Hand L", new Bounds(0, 0, 10, 3), mark: Mark.Green), Pixel("Sleeve L", new Bounds(0, 0, 10, 6), mark: Mark.Red)),
        Pixel("Nose", new Bounds(0, 0, 1, 1)),
        Pixel("Blank", new Bounds(0, 0, 1, 1), [0]),
        Pixel("Hand R", new Bounds(0, 0, 10, 3), mark: Mark.Green),
        Pixel("Sketch", new Bounds(0, 0, 100, 60)));

    private static LayerFile Unmarked() => File("unmarked.psd", 100, 60, Pixel("Ear L", new Bounds(0, 0, 2, 2)), Pixel("Mouth", new Bounds(0, 0, 3, 2)));

    private static IReadOnlyList<StatusSummary> Sum(StatusGrouping grouping, params LayerFile[] files)
    {
        var sums = new StatusSums(grouping);
        foreach (var status in files.SelectMany(file => new StatusReader().Read(file))) sums.Add(status);
        return sums.Summarize();
    }

    [Fact]
    public void By_file()
    {
        var sums = Sum(StatusGrouping.File, Marked(), Unmarked());

        Assert.Equal(
            new StatusSummary
            {
                Key = "marked.psd", Parts = 4, Done = 2, Open = 2, Unknown = 0, PercentByCount = 50, PercentByArea = 49.6,
                MissingOpposites = 3, SetApart = 1, PaintedArea = 121, HasMarks = true, Note = "",
            },
            sums[0]);
        var unmarked = sums[1];
        Assert.Equal(("unmarked.psd", 2, null, null, 2), (unmarked.Key, unmarked.Parts, unmarked.Done, unmarked.Open, unmarked.Unknown));
        Assert.Null(unmarked.PercentByCount);
        Assert.Null(unmarked.PercentByArea);
        Assert.False(unmarked.HasMarks);
        Assert.Contains("No layer carries a mark", unmarked.Note);
        Assert.Contains("-DoneName", unmarked.Note);
    }

    [Fact]
    public void By_group()
    {
        var sums = Sum(StatusGrouping.Group, Marked());

        Assert.Equal([("Arm L", 2, 1, 50.0, 33.3), ("(outermost)", 2, 1, 50.0, 96.8)], sums.Select(sum => (sum.Key, sum.Parts, sum.Done!.Value, sum.PercentByCount!.Value, sum.PercentByArea!.Value)));
    }

    [Fact]
    public void A_group_comes_before_the_groups_in_it()
    {
        var file = File(Group("Body", Group("Arm", Group("Hand", Pixel("Thumb")), Pixel("Sleeve")), Pixel("Skin")), Group("Hat", Group("Band", Pixel("Knot"))));

        Assert.Equal(["Body", "Body/Arm", "Body/Arm/Hand", "Hat/Band"], Sum(StatusGrouping.Group, file).Select(sum => sum.Key));
    }

    [Fact]
    public void By_side_over_files_leaves_unknown_parts_out_of_the_percentages_and_says_so()
    {
        var sums = Sum(StatusGrouping.Side, Unmarked(), Marked());

        Assert.Equal([("Left", 3, 1, 1, 1, 50.0), ("Right", 1, 1, 0, 0, 100.0), ("None", 2, 0, 1, 1, 0.0)],
            sums.Select(sum => (sum.Key, sum.Parts, sum.Done!.Value, sum.Open!.Value, sum.Unknown, sum.PercentByCount!.Value)));
        Assert.StartsWith("1 of 3 parts lie in files where no layer carries a mark", sums[0].Note);
        Assert.Equal("", sums[1].Note);
    }

    [Fact]
    public void By_mark() =>
        Assert.Equal([("None", 1, 1), ("Red", 1, 0), ("Green", 2, 0)], Sum(StatusGrouping.Mark, Marked()).Select(sum => (sum.Key, sum.Parts, sum.SetApart)));

    [Fact]
    public void A_hundred_percent_means_all_and_zero_means_none()
    {
        var sums = Sum(StatusGrouping.File,
            File("nearly.psd", 3000, 3000, Pixel("A", new Bounds(0, 0, 1000, 300), mark: Mark.Green), Pixel("B", new Bounds(0, 0, 1, 1))),
            File("hardly.psd", 3000, 3000, Pixel("A", new Bounds(0, 0, 1000, 300)), Pixel("B", new Bounds(0, 0, 1, 1), mark: Mark.Green)));

        Assert.Equal([99.9, 0.1], sums.Select(sum => sum.PercentByArea!.Value));
    }

    [Fact]
    public void Files_without_parts_say_so()
    {
        var sum = Assert.Single(Sum(StatusGrouping.File, File(Pixel("Sketch", mark: Mark.Green))));

        Assert.Equal((0, 1, null), (sum.Parts, sum.SetApart, sum.PercentByCount));
        Assert.Contains("No layer here is a part", sum.Note);
    }

    [Fact]
    public void Nothing_in_gives_nothing_out() => Assert.Empty(new StatusSums(StatusGrouping.File).Summarize());
}
