using CsCheck;
using LayerTools.Measures.Budget;
using LayerTools.Model;
using Xunit;

namespace LayerTools.Tests.Measures.Budget;

public class BoxPackerTests
{
    private static readonly Gen<(PackSize[] Sizes, int Side, bool MayTurn)> Jobs =
        Gen.Int[8, 64].SelectMany(side => Gen.Select(
            Gen.Select(Gen.Int[1, side], Gen.Int[1, side], (width, height) => new PackSize(width, height)).Array[0, 40],
            Gen.Const(side),
            Gen.Bool));

    [Fact]
    public void No_box_overlaps_another_or_leaves_its_page_and_the_area_bound_is_kept()
    {
        Jobs.Sample(job =>
        {
            var packer = new BoxPacker(job.Side, job.Side, job.MayTurn);
            var outcome = packer.Pack(job.Sizes);

            EnsureSound(job.Sizes, outcome, job.Side, job.Side, job.MayTurn);
            var pageArea = (long)job.Side * job.Side;
            Assert.True(outcome.PageCount >= (job.Sizes.Sum(size => size.Area) + pageArea - 1) / pageArea);
            Assert.InRange(outcome.FewestPages, 0, outcome.PageCount);
            Assert.Equal(outcome.Places, packer.Pack([.. job.Sizes]).Places);
        }, iter: 300);
    }

    [Theory]
    [InlineData("C1 P1", PackingInstances.C1P1, 20, 20, 10)]
    [InlineData("C1 P2", PackingInstances.C1P2, 20, 20, 10)]
    [InlineData("C1 P3", PackingInstances.C1P3, 20, 20, 10)]
    [InlineData("C4 P2", PackingInstances.C4P2, 60, 60, 7)]
    [InlineData("C7 P2", PackingInstances.C7P2, 160, 240, 5)]
    public void Hopper_and_Turton_instances_need_little_more_than_their_optimum(string name, string text, int width, int optimum, int margin)
    {
        var sizes = PackingInstances.Parse(text);
        Assert.Equal((long)width * optimum, sizes.Sum(size => size.Area));

        var height = optimum;
        while (new BoxPacker(width, height, mayTurn: false).Pack(sizes, enough: 1, cancellation: TestContext.Current.CancellationToken).PageCount > 1) height++;

        Assert.True(height * 100 <= optimum * (100 + margin), $"{name}: {height} rows, where {optimum} are enough.");
    }

    [Theory]
    [InlineData(PackingInstances.Class1With20, 10)]
    [InlineData(PackingInstances.Class1With20Second, 10)]
    [InlineData(PackingInstances.Class1With40, 10)]
    [InlineData(PackingInstances.Class2With100, 30)]
    [InlineData(PackingInstances.Class3With60, 40)]
    public void Berkey_and_Wang_instances_need_at_most_one_page_more_than_any_packing(string text, int side)
    {
        var sizes = PackingInstances.Parse(text);
        foreach (var mayTurn in new[] { false, true })
        {
            var outcome = new BoxPacker(side, side, mayTurn).Pack(sizes, cancellation: TestContext.Current.CancellationToken);

            EnsureSound(sizes, outcome, side, side, mayTurn);
            Assert.InRange(outcome.PageCount, outcome.FewestPages, outcome.FewestPages + 1);
        }
    }

    [Fact]
    public void Boxes_over_half_a_page_both_ways_need_a_page_each_though_their_area_would_not()
    {
        Assert.Equal(3, new BoxPacker(10, 10, mayTurn: false).FindFewestPages([new(6, 6), new(6, 6), new(6, 6), new(1, 1)]));
        Assert.Equal(2, new BoxPacker(10, 20, mayTurn: false).FindFewestPages([new(6, 11), new(6, 11)]));
        // Lying down, they stack.
        Assert.Equal(1, new BoxPacker(12, 20, mayTurn: true).FindFewestPages([new(7, 11), new(7, 11)]));
    }

    [Fact]
    public void Turning_fits_what_else_would_not()
    {
        Assert.False(new BoxPacker(10, 4, mayTurn: false).Fits(new PackSize(4, 10)));
        var outcome = new BoxPacker(10, 4, mayTurn: true).Pack([new(4, 10)], cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(new PackPlace(0, 0, 0, true), outcome.Places[0]);
    }

    [Fact]
    public void Enough_pages_end_the_search()
    {
        var sizes = PackingInstances.Parse(PackingInstances.Class3With60);
        var packer = new BoxPacker(40, 40, mayTurn: false);
        Assert.InRange(packer.Pack(sizes, enough: 60, cancellation: TestContext.Current.CancellationToken).PageCount, packer.Pack(sizes, cancellation: TestContext.Current.CancellationToken).PageCount, 60);
    }

    internal static void EnsureSound(IReadOnlyList<PackSize> sizes, PackOutcome outcome, int width, int height, bool mayTurn)
    {
        Assert.Equal(sizes.Count, outcome.Places.Count);
        var boxes = outcome.Places.Select((place, i) => (place.Page, Box: Box(sizes[i], place))).ToList();
        foreach (var (page, box) in boxes)
        {
            Assert.InRange(page, 0, outcome.PageCount - 1);
            Assert.Equal(box, box.Intersect(new Bounds(0, 0, width, height)));
        }

        for (var i = 0; i < boxes.Count; i++)
        {
            for (var j = 0; j < i; j++) Assert.True(boxes[i].Page != boxes[j].Page || boxes[i].Box.Intersect(boxes[j].Box).IsEmpty, $"{boxes[i]} lies on {boxes[j]}.");
        }

        if (!mayTurn) Assert.DoesNotContain(outcome.Places, place => place.Turned);
        Assert.Equal(outcome.PageCount, outcome.Places.Select(place => place.Page).Distinct().Count());
    }

    private static Bounds Box(PackSize size, PackPlace place) => place.Turned
        ? Bounds.FromSize(place.Left, place.Top, size.Height, size.Width)
        : Bounds.FromSize(place.Left, place.Top, size.Width, size.Height);
}
