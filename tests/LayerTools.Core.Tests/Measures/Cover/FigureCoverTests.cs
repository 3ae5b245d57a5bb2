using CsCheck;
using LayerTools.Errors;
using LayerTools.Measures.Cover;
using LayerTools.Measures.Survey;
using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Measures.Cover.CoverageShapes;

namespace LayerTools.Tests.Measures.Cover;

public class FigureCoverTests
{
    /// <summary>Three or four parts of a few discs and boxes with some specks, partly outside the canvas.</summary>
    private static readonly Gen<CoverageMap[]> Stacks = Gen.Select(Gen.Int[2, 4], Gen.Int).Select((count, seed) => Enumerable.Range(0, count).Select(i => Invent(new Random(seed + i))).ToArray());

    [Fact]
    public void Areas_and_depths_are_those_of_brute_force() => Gen.Select(Stacks, Gen.Int[1, 9]).Sample(
        (maps, maximumDepth) =>
        {
            var (file, stack) = Figure(60, 44, maps);
            var canvas = new Bounds(0, 0, 60, 44);
            var cover = Measure(file, stack, _ => true, new CoverOptions { MaximumDepth = maximumDepth });
            for (var i = 0; i < stack.Count; i++)
            {
                var force = new BruteForce(canvas, maps, i, maximumDepth);
                Assert.Equal((force.Area(), force.VisibleArea()), (cover.Parts[i].Area, cover.Parts[i].VisibleArea));
                for (var front = 0; front < i; front++)
                {
                    var expected = SeamSummary.Of(force.Seam(front), cover.Parts[i].WantedDepth, maximumDepth);
                    var actual = cover.Seams.SingleOrDefault(seam => seam.LayerNumber == i + 1 && seam.NeighbourNumber == front + 1);
                    Assert.Equal(force.OverlapArea(front), actual?.OverlapArea ?? 0);
                    Assert.Equal(
                        (expected?.Length ?? 0, expected?.Depths.Count ?? 0, expected?.ShallowLength ?? 0, expected?.SmallestDepth, expected is null ? null : SeamSummary.Median(expected.Depths), expected?.Place.X, expected?.Place.Y),
                        (actual?.SeamLength ?? 0, actual?.CountedLength ?? 0, actual?.ShallowLength ?? 0, actual?.SmallestDepth, actual?.MedianDepth, actual?.X, actual?.Y));
                }
            }
        },
        iter: 25);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(19)]
    public void A_part_is_as_deep_as_it_is_painted_on_underneath(int depth)
    {
        var seam = MeasureSeam(20, Box(20, 20, 180, 100), Box(60, 100 - depth, 140, 180));
        Assert.Equal((80, (double)depth, (double)depth), (seam.SeamLength, seam.SmallestDepth, seam.MedianDepth));
        Assert.Equal(80L * depth, seam.OverlapArea);
    }

    [Fact]
    public void Depths_end_at_the_maximum()
    {
        var seam = MeasureSeam(20, Box(20, 20, 180, 100), Box(60, 79, 140, 180));
        Assert.Equal((20.0, 20.0, 0), (seam.SmallestDepth, seam.MedianDepth, seam.ShallowLength));
    }

    [Fact]
    public void A_detail_that_lies_on_a_part_is_as_deep_as_can_be()
    {
        var seam = MeasureSeam(32, Disc(100, 100, 12), Disc(100, 100, 60));
        Assert.Equal((32.0, 32.0), (seam.SmallestDepth, seam.MedianDepth));
    }

    [Fact]
    public void A_hole_cut_for_a_detail_is_found()
    {
        var face = Where(new Bounds(20, 20, 180, 180), (x, y) => ((x - 100) * (x - 100)) + ((y - 100) * (y - 100)) > 30 * 30);
        var seam = MeasureSeam(32, Disc(100, 100, 30), face);
        Assert.Equal((0.0, seam.SeamLength), (seam.MedianDepth, seam.ShallowLength));
    }

    [Fact]
    public void A_cut_in_the_middle_of_a_seam_is_found_and_told_where()
    {
        var part = Where(new Bounds(20, 80, 180, 180), (x, y) => y >= 100 || x is < 98 or > 102);
        var seam = MeasureSeam(16, Box(20, 20, 180, 100), part);
        Assert.Equal((0.0, 16.0, 100, 100), (seam.SmallestDepth, seam.MedianDepth, seam.X, seam.Y));
        Assert.Equal(9, seam.ShallowLength);
    }

    [Fact]
    public void A_joint_drawn_round_is_measured_in_its_middle_and_not_at_its_ends()
    {
        var limb = Where(new Bounds(60, 80, 140, 180), (x, y) => y >= 120 || ((x - 99.5) * (x - 99.5)) + ((y - 119.5) * (y - 119.5)) <= 40 * 40);
        var seam = MeasureSeam(64, Box(20, 0, 180, 120), limb);
        Assert.InRange(seam.MedianDepth!.Value, 30, 40);
        Assert.InRange(seam.SmallestDepth!.Value, 20, 40);
        Assert.Equal(0, seam.ShallowLength);
    }

    [Fact]
    public void Outlines_that_cross_are_no_seam_that_opens()
    {
        // The lower disc's own outline runs underneath the upper one at both ends.
        var seam = MeasureSeam(8, Disc(70, 100, 50), Disc(130, 100, 50));
        Assert.Equal((8.0, 0), (seam.MedianDepth, seam.ShallowLength));
    }

    [Theory]
    [InlineData(0.2, 0)]
    [InlineData(0.05, 40)]
    public void Outlines_that_cross_at_a_flat_angle_are_a_seam_that_opens_only_if_it_is_very_flat(double slope, int least)
    {
        // The neighbour ends at row 100; the part's outline comes up from below and falls behind that edge by so many px a column.
        var part = Where(new Bounds(0, 20, 200, 200), (x, y) => y >= 100 - (slope * (x - 20)));
        var (file, stack) = Figure(200, 200, Box(0, 0, 200, 100), part);
        var seam = Measure(file, stack, _ => true, new CoverOptions { MaximumDepth = 8, WantedDepth = 5 }).Seams.Single();
        Assert.InRange(seam.ShallowLength, least, least == 0 ? 0 : 200);
    }

    [Theory]
    [InlineData(0, 0.0)]
    [InlineData(3, 3.0)]
    public void A_seam_that_is_nothing_but_ends_is_measured_in_its_middle(int depth, double expected)
    {
        var seam = MeasureSeam(16, Box(20, 20, 180, 100), Box(100, 100 - depth, 106, 180));
        Assert.Equal((expected, expected), (seam.SmallestDepth, seam.MedianDepth));
    }

    [Fact]
    public void A_small_round_part_is_not_taken_for_a_deep_one()
    {
        // Its corners have no unpainted pixels of their own.
        var seam = MeasureSeam(64, Disc(60, 50, 20), Disc(60, 80, 13));
        Assert.InRange(seam.SmallestDepth!.Value, 1, 4);
        Assert.InRange(seam.MedianDepth!.Value, 1, 4);
    }

    [Fact]
    public void A_part_reaches_to_the_middle_of_a_line_drawn_around_it()
    {
        // A line 6 px wide lies half on the colour and half beside it.
        var line = Where(new Bounds(37, 37, 163, 163), (x, y) => x is < 43 or >= 157 || y is < 43 or >= 157);
        var seam = MeasureSeam(16, line, Box(40, 40, 160, 160));
        Assert.Equal((16.0, 0), (seam.SmallestDepth, seam.ShallowLength));
    }

    [Fact]
    public void A_part_that_is_wholly_hidden_has_no_seam()
    {
        var (file, stack) = Figure(100, 100, Box(10, 10, 90, 90), Box(20, 20, 30, 30));
        var cover = Measure(file, stack, _ => true);
        Assert.Equal((100, 0, 100, 0.0), (cover.Parts[1].Area, cover.Parts[1].VisibleArea, cover.Parts[1].HiddenArea, cover.Parts[1].VisiblePercent));
        Assert.Equal((0, null, null), (cover.Parts[1].SeamLength, cover.Parts[1].SmallestDepth, cover.Seams[0].MedianDepth));
        Assert.Equal(100, cover.Seams[0].OverlapArea);
    }

    [Fact]
    public void What_lies_behind_or_does_not_hide_covers_nothing()
    {
        var (file, stack) = Figure(100, 100, Box(10, 10, 90, 50), Box(10, 40, 90, 90), Box(0, 0, 100, 100));
        var shade = new[] { stack[0] with { Hides = false }, stack[1] };
        var unhidden = Measure(file, shade, _ => true);
        Assert.Equal((4000, 0), (unhidden.Parts[1].VisibleArea, unhidden.Seams.Count));
        Assert.Equal(3200, Measure(file, stack, _ => true).Parts[0].VisibleArea);
    }

    [Fact]
    public void The_worst_neighbour_is_the_one_with_the_longest_open_stretch()
    {
        var (file, stack) = Figure(200, 200, Box(0, 0, 40, 100), Box(100, 0, 200, 100), Box(0, 100, 200, 200));
        var body = Measure(file, stack, part => part == stack[2]).Parts.Single();
        Assert.Equal(("B", 140, 0.0, 0), (body.WorstNeighbour, body.SeamLength, body.SmallestDepth, body.NeighbourCount));
        Assert.InRange(body.ShallowLength, 100, 140);
    }

    [Fact]
    public void Parts_without_pixels_and_outside_the_canvas_have_no_area()
    {
        var (file, stack) = Figure(100, 100, new CoverageMap(Bounds.Empty), Box(-50, -50, 0, 20), Box(0, 0, 10, 10));
        var cover = Measure(file, stack, _ => true);
        Assert.Equal([0, 0, 100], cover.Parts.Select(part => part.Area));
        Assert.Equal([null, null, 100], cover.Parts.Select(part => part.VisiblePercent));
    }

    [Theory]
    [InlineData(0, null)]
    [InlineData(257, null)]
    [InlineData(8, 0.0)]
    [InlineData(8, 8.5)]
    [InlineData(8, double.NaN)]
    public void Depths_out_of_range_are_refused(int maximumDepth, double? wanted)
    {
        var file = ModelBuilder.File(ModelBuilder.Pixel("Arm"));
        Assert.Throws<LayeredFileException>(() => FigureCover.Measure(file, file.GetLayers(), new CoverOptions { MaximumDepth = maximumDepth, WantedDepth = wanted }, TestContext.Current.CancellationToken));
    }

    [Fact]
    public void The_usual_depth_grows_with_the_canvas()
    {
        var file = ModelBuilder.File("figure.psd", 5000, 6000);
        Assert.Equal(9, new CoverOptions().WantedDepthFor(file));
        Assert.Equal(4, new CoverOptions { MaximumDepth = 4 }.WantedDepthFor(file));
    }

    [Fact]
    public void A_stopped_measure_stops()
    {
        var (file, stack) = Figure(100, 100, Box(10, 10, 90, 50), Box(10, 40, 90, 90));
        Assert.ThrowsAny<OperationCanceledException>(() => FigureCover.Measure(file, stack, _ => true, new CoverOptions(), cancellation: new CancellationToken(canceled: true)));
    }

    [Fact]
    public void More_neighbours_than_fit_into_memory_are_refused()
    {
        var (file, stack) = CoverageShapes.Figure(10, 10, [.. Enumerable.Repeat(CoverageShapes.Box(0, 0, 2, 2), 1500)]);

        var error = Assert.Throws<LayeredFileException>(() => Measure(file, stack, _ => true));
        var some = FigureCover.Measure(file, stack, _ => true, new CoverOptions(), seam => seam.LayerNumber == 3, TestContext.Current.CancellationToken);

        Assert.Equal(LayeredFileErrorKind.LimitExceeded, error.Kind);
        Assert.Equal([1, 2], some.Seams.Select(seam => seam.NeighbourNumber));
    }

    private static FigureCover Measure(LayerFile file, IReadOnlyList<CoverPart> stack, Func<CoverPart, bool> isChosen, CoverOptions? options = null) =>
        FigureCover.Measure(file, stack, isChosen, options ?? new CoverOptions(), cancellation: TestContext.Current.CancellationToken);

    private static CoverageMap Invent(Random random)
    {
        var bounds = Bounds.FromSize(random.Next(-8, 30), random.Next(-8, 20), random.Next(1, 75), random.Next(1, 50));
        var shapes = Enumerable.Range(0, random.Next(1, 4))
            .Select(_ => (X: random.Next(60), Y: random.Next(44), Size: random.Next(2, 25), Round: random.Next(2) == 0))
            .ToList();
        return Where(bounds, (x, y) => random.Next(100) > 2 && shapes.Exists(shape => shape.Round
            ? ((x - shape.X) * (x - shape.X)) + ((y - shape.Y) * (y - shape.Y)) <= shape.Size * shape.Size
            : Math.Abs(x - shape.X) <= shape.Size && Math.Abs(y - shape.Y) <= shape.Size));
    }
}
