using LayerTools.Edits;
using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Measures;
using LayerTools.Measures.Survey;
using LayerTools.Model;
using LayerTools.Model.Fills;
using LayerTools.Pixels;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Measures.Survey;

/// <summary>The canvas of these figures has 100 × 60 px.</summary>
public class FigureSurveyTests
{
    [Fact]
    public void Every_layer_but_groups_and_adjustments_is_surveyed_front_to_back()
    {
        var file = File(Group("Head", Pixel("Eye"), Group("Sketch", Pixel("Line"))), Other(LayerKind.Adjustment, "Levels"), Other(LayerKind.Fill, "Colour"), Pixel("Guide"));

        var survey = Take(file);

        Assert.Equal(["Head/Eye", "Head/Sketch/Line", "Colour", "Guide"], survey.Parts.Select(part => part.Layer.LayerPath));
        Assert.Equal([LayerRole.Part, LayerRole.Sketch, LayerRole.Part, LayerRole.Guide], survey.Parts.Select(part => part.Role));
        Assert.Equal([true, false, false, false], survey.Parts.Select(part => part.IsPart));
        Assert.Same(survey.Parts[1], survey.Find(file.Find("Head/Sketch/Line")));
        Assert.Null(survey.Find(file.Find("Head")));
    }

    [Fact]
    public void Boxes_and_areas_tell_what_is_painted_from_what_is_seen()
    {
        var part = Take(Painting.Of("Arm").Rectangle(90, 10, 20, 4, alpha: 7).Rectangle(94, 11, 3, 2, alpha: 8).Rectangle(95, 11, 1, 1, alpha: 128).Within(new Bounds(70, 0, 120, 60)));

        Assert.Equal(new Bounds(90, 10, 110, 14), part.Painted);
        Assert.Equal(new Bounds(94, 11, 97, 13), part.Seen);
        Assert.Equal((80, 74, 40), (part.PaintedArea, part.FaintArea, part.OutsideArea));
        Assert.Equal(new Bounds(95, 11, 96, 12), part.Coverage.Bounds);
        Assert.True(part.Coverage[95, 11]);
        Assert.False(part.Coverage[94, 11]);
        Assert.False(part.IsEmpty);
    }

    [Fact]
    public void Rows_above_and_below_the_canvas_lie_outside()
    {
        var part = Take(Painting.Of("Arm").Rectangle(-5, -3, 10, 66));

        Assert.Equal((10 * 66) - (5 * 60), part.OutsideArea);
    }

    [Fact]
    public void The_centre_goes_by_alpha_and_lies_between_pixels_where_they_are_even()
    {
        var even = Take(Painting.Of("Body").Rectangle(40, 10, 20, 30));
        var leaning = Take(Painting.Of("Body").Rectangle(0, 0, 1, 1, alpha: 50).Rectangle(99, 0, 1, 1, alpha: 150));

        Assert.Equal((50.0, 25.0), (even.CenterX, even.CenterY));
        Assert.Equal(((0.5 * 50) + (99.5 * 150)) / 200, leaning.CenterX, 12);
    }

    [Fact]
    public void An_empty_part_has_no_centre()
    {
        var part = Take(Painting.Of("Arm").Rectangle(0, 0, 10, 10, alpha: 0));

        Assert.True(double.IsNaN(part.CenterX) && double.IsNaN(part.CenterY));
        Assert.True(part.IsEmpty);
        Assert.Equal(Bounds.Empty, part.Painted);
        Assert.Empty(part.Islands);
        Assert.Empty(part.Holes);
        Assert.False(part.Coverage[0, 0]);
    }

    [Fact]
    public void A_layer_without_alpha_covers_its_rectangle()
    {
        var layer = Pixel("Backdrop", new Bounds(-1, 5, 130, 7));
        layer.Planes.RemoveAll(plane => plane.Role == PlaneRole.Alpha);

        var part = Take(File(layer)).Parts.Single();

        Assert.Equal((262, new Bounds(-1, 5, 130, 7)), (part.PaintedArea, part.Coverage.Bounds));
        Assert.Equal(62, part.OutsideArea);
    }

    [Fact]
    public void Islands_come_the_largest_first_and_faint_pixels_do_not_join_them()
    {
        var part = Take(Painting.Of("Hair").Rectangle(0, 0, 20, 2, alpha: 7).Rectangle(0, 0, 3, 2).Rectangle(5, 0, 7, 2).Rectangle(19, 1, 1, 1));

        Assert.Equal(3, part.IslandCount);
        Assert.Equal([new PartRegion(new Bounds(5, 0, 12, 2), 14), new PartRegion(new Bounds(0, 0, 3, 2), 6), new PartRegion(new Bounds(19, 1, 20, 2), 1)], part.Islands);
    }

    [Fact]
    public void Only_the_largest_islands_are_told_but_all_are_counted()
    {
        var dust = Painting.Of("Dust").Within(new Bounds(0, 0, 100, 60));
        for (var i = 0; i < 250; i++) dust.Rectangle(i % 50 * 2, i / 50 * 2, 1, 1);
        dust.Rectangle(0, 40, 10, 10);

        var part = Take(dust);

        Assert.Equal((251, IslandFinder.MostBoxes, 100), (part.IslandCount, part.Islands.Count, part.Islands[0].Area));
        Assert.Equal(new Bounds(0, 0, 1, 1), part.Islands[1].Box);
    }

    [Fact]
    public void A_hole_is_a_half_transparent_spot_that_solid_pixels_enclose()
    {
        var part = Take(Painting.Of("Coat").Rectangle(10, 10, 80, 40).Rectangle(20, 20, 5, 3, alpha: 229).Rectangle(25, 23, 2, 2, alpha: 8).Rectangle(60, 30, 2, 2, alpha: 128));

        Assert.Equal([new PartRegion(new Bounds(20, 20, 27, 25), 19), new PartRegion(new Bounds(60, 30, 62, 32), 4)], part.Holes);
        Assert.Equal((2, 23), (part.HoleCount, part.HoleArea));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(7)]
    public void A_spot_with_a_clear_pixel_in_it_is_an_opening(byte clear) =>
        Assert.Empty(Take(Painting.Of("Coat").Rectangle(10, 10, 80, 40).Rectangle(20, 20, 5, 5, alpha: 100).Rectangle(22, 22, 1, 1, alpha: clear)).Holes);

    [Fact]
    public void Solid_enough_is_no_hole() => Assert.Empty(Take(Painting.Of("Coat").Rectangle(10, 10, 80, 40).Rectangle(20, 20, 5, 5, alpha: 230)).Holes);

    [Theory]
    [InlineData(10, 20, 3, 3)]
    [InlineData(87, 20, 3, 3)]
    [InlineData(20, 10, 3, 3)]
    [InlineData(20, 47, 3, 3)]
    [InlineData(0, 0, 100, 60)]
    public void A_soft_edge_is_no_hole(int left, int top, int width, int height) =>
        Assert.Empty(Take(Painting.Of("Coat").Rectangle(10, 10, 80, 40).Rectangle(left, top, width, height, alpha: 100).Within(new Bounds(10, 10, 90, 50))).Holes);

    [Fact]
    public void A_spot_that_touches_the_outside_at_a_corner_is_no_hole() =>
        Assert.Empty(Take(Painting.Of("Coat").Rectangle(10, 10, 80, 40).Rectangle(10, 20, 1, 1, alpha: 0).Rectangle(11, 21, 3, 3, alpha: 100)).Holes);

    [Fact]
    public void Rows_without_paint_part_what_lies_above_from_what_lies_below() =>
        Assert.Empty(Take(Painting.Of("Stripes").Rectangle(10, 10, 20, 2, alpha: 100).Rectangle(9, 10, 1, 2).Rectangle(30, 10, 1, 2).Rectangle(9, 14, 22, 5).Rectangle(12, 14, 3, 1, alpha: 100).Rectangle(9, 30, 22, 5).Rectangle(12, 34, 3, 1, alpha: 100)).Holes);

    [Fact]
    public void Masks_cut_and_opacity_does_not()
    {
        var layer = Painting.Of("Arm").Rectangle(10, 10, 20, 20).ToLayer();
        layer.OpacityByte = 3;
        layer.Mask = new LayerMask { Bounds = new Bounds(15, 10, 18, 30), DefaultColor = 0 };
        layer.Planes.Add(Raw(PlaneRole.UserMask, Enumerable.Repeat((byte)255, 60).ToArray()));

        Assert.Equal(new Bounds(15, 10, 18, 30), Take(File(layer)).Parts.Single().Painted);
    }

    [Fact]
    public void A_feathered_mask_is_drawn()
    {
        var layer = Painting.Of("Arm").Rectangle(0, 0, 60, 60).ToLayer();
        layer.Mask = new LayerMask { Bounds = new Bounds(0, 0, 30, 60), DefaultColor = 0, UserFeather = 4 };
        layer.Planes.Add(Raw(PlaneRole.UserMask, Enumerable.Repeat((byte)255, 1800).ToArray()));

        var part = Take(File(layer)).Parts.Single();

        // A step that is blurred keeps its middle, where half is let through.
        Assert.Equal(30, part.Coverage.Bounds.Right);
        Assert.InRange(part.Painted.Right, 35, 45);
    }

    [Fact]
    public void A_shape_without_stored_pixels_is_drawn()
    {
        PathKnot[] corners = [Corner(0.1, 0.1), Corner(0.2, 0.1), Corner(0.2, 0.2), Corner(0.1, 0.2)];
        var path = new VectorPath([new PathOutline(PathOperation.Unite, corners)], IsFilledWhenEmpty: false, IsInverted: false, IsDisabled: false);
        var file = File(new Layer(LayerKind.Shape, "Plate", new StubLayerDetail { Described = new ColorFill(default), Path = path }));

        Assert.Equal(new Bounds(10, 6, 20, 12), Take(file).Parts.Single().Coverage.Bounds);

        static PathKnot Corner(double x, double y) => new(x, y, x, y, x, y);
    }

    [Theory]
    [InlineData(16)]
    [InlineData(32)]
    public void Deep_alpha_counts_as_the_bytes_it_rounds_to(int depth)
    {
        byte[] samples = depth == 16 ? [0, 0, 0x07, 0x07, 0x80, 0x80, 0xFF, 0xFF] : [0, 0, 0, 0, .. Float(7f / 255), .. Float(128f / 255), .. Float(1f)];
        var file = new LayerFile("deep.psd", FileFormat.Psd, 100, 60, ColorMode.Rgb, depth, new StubFileDetail());
        var layer = Pixel("Arm", new Bounds(10, 10, 14, 11));
        layer.Planes.Clear();
        foreach (var role in new[] { PlaneRole.Alpha, PlaneRole.Color0, PlaneRole.Color1, PlaneRole.Color2 }) layer.Planes.Add(Raw(role, samples));
        file.Root.Append(layer);
        file.Renumber();

        var part = Take(file).Parts.Single();

        Assert.Equal((new Bounds(11, 10, 14, 11), 1, new Bounds(12, 10, 14, 11)), (part.Painted, part.FaintArea, part.Coverage.Bounds));

        static byte[] Float(float value) => [.. BitConverter.GetBytes(value).Reverse()];
    }

    [Fact]
    public void Everything_agrees_with_a_look_at_each_pixel()
    {
        var random = new Random(4);
        for (var round = 0; round < 60; round++)
        {
            var box = Bounds.FromSize(random.Next(-40, 60), random.Next(-20, 30), random.Next(1, 200), random.Next(1, 40));
            var painting = Painting.Of("Part").Within(box);
            for (var i = random.Next(1, 30); i > 0; i--)
            {
                byte[] alphas = [0, 1, 7, 8, 127, 128, 229, 230, 255, 255];
                painting.Ellipse(box.Left + random.Next(-20, box.Width), box.Top + random.Next(-20, box.Height), random.Next(1, 120), random.Next(1, 30), alphas[random.Next(alphas.Length)]);
            }

            var layer = painting.ToLayer();
            AssertSame(BruteSurvey.Take(layer, new Bounds(0, 0, 100, 60)), Take(File(layer)).Parts.Single());
        }
    }

    [Fact]
    public void Real_files_say_the_same_drawn_and_read()
    {
        var count = 0;
        foreach (var path in SharedFiles.Fixtures)
        {
            var file = LayerFiles.Read(path);
            if (file.BitDepth == 1 || file.ColorMode is ColorMode.Indexed or ColorMode.Multichannel or ColorMode.Bitmap) continue;
            using var reader = new PixelReader(file);
            foreach (var part in Take(file).Parts.Where(part => part.Layer.Planes.Count > 0 && part.Layer.Kind == LayerKind.Pixel))
            {
                Assert.Equal((path, BruteSurvey.DrawArea(file, reader, part.Layer)), (path, part.PaintedArea));
                count++;
            }
        }

        Assert.InRange(count, 100, int.MaxValue);
    }

    [Fact]
    public void Pending_edits_count()
    {
        var file = File(Painting.Of("Arm").Rectangle(10, 10, 20, 20).ToLayer());
        new CanvasEdit { Shift = (5, -2) }.Plan(file, [.. file.GetLayers()]).Apply();

        Assert.Equal(new Bounds(15, 8, 35, 28), Take(file).Parts.Single().Painted);
    }

    [Fact]
    public void A_layer_that_claims_too_much_is_refused_and_not_tried()
    {
        var layer = Pixel("Arm");
        layer.Bounds = new Bounds(0, 0, 300_000, 300_000);
        layer.Planes.RemoveAll(plane => plane.Role == PlaneRole.Alpha);

        var error = Assert.Throws<LayeredFileException>(() => FigureSurvey.Take(File(layer), new ReadLimits { MemoryMegabytes = 20 }, TestContext.Current.CancellationToken));

        Assert.Equal(LayeredFileErrorKind.LimitExceeded, error.Kind);
        layer.Bounds = new Bounds(int.MinValue, 0, int.MaxValue, 10);
        Assert.Equal(LayeredFileErrorKind.LimitExceeded, Assert.Throws<LayeredFileException>(() => Take(File(layer))).Kind);
    }

    [Fact]
    public void Two_far_pixels_take_the_memory_of_the_rectangle_around_them_which_is_limited()
    {
        var far = Painting.Of("Arm").Rectangle(0, 0, 1, 1).Rectangle(9_999, 1_999, 1, 1).ToLayer();

        Assert.Equal(10_000, Take(File(far)).Parts.Single().Coverage.Bounds.Width);
        Assert.Throws<LayeredFileException>(() => FigureSurvey.Take(File(far), new ReadLimits { MemoryMegabytes = 2 }, TestContext.Current.CancellationToken));
    }

    [Fact]
    public void The_front_most_damaged_part_is_told()
    {
        var layers = Enumerable.Range(0, 40).Select(i => Pixel(FormattableString.Invariant($"Part {i}"), new Bounds(0, 0, 10 + i, 10))).ToArray();
        foreach (var i in new[] { 7, 12, 38 })
        {
            layers[i].Planes[0] = Raw(PlaneRole.Alpha, [1, 2, 3]);
        }

        for (var round = 0; round < 20; round++)
        {
            Assert.Contains("'Part 7'", Assert.Throws<LayeredFileException>(() => Take(File(layers))).Message, StringComparison.Ordinal);
            foreach (var layer in layers) layer.Detach();
        }
    }

    [Fact]
    public void It_can_be_cancelled()
    {
        var layer = Pixel("Arm");
        layer.Bounds = new Bounds(0, 0, 300_000, 500_000);
        layer.Planes[0] = new Plane(PlaneRole.Alpha, (int)Compression.Zip, new MemoryBytes(Zlib.Deflate(new byte[1 << 24])));
        using var source = new CancellationTokenSource();
        source.Cancel();

        Assert.ThrowsAny<OperationCanceledException>(() => FigureSurvey.Take(File(layer), source.Token));
    }

    private static FigureSurvey Take(LayerFile file) => FigureSurvey.Take(file, TestContext.Current.CancellationToken);

    private static PartSurvey Take(Painting painting) => Take(File(painting.ToLayer())).Parts.Single();

    private static void AssertSame(PartSurvey expected, PartSurvey actual)
    {
        Assert.Equal((expected.Painted, expected.Seen), (actual.Painted, actual.Seen));
        Assert.Equal((expected.PaintedArea, expected.FaintArea, expected.OutsideArea), (actual.PaintedArea, actual.FaintArea, actual.OutsideArea));
        Assert.Equal(expected.CenterX, actual.CenterX, 9);
        Assert.Equal(expected.CenterY, actual.CenterY, 9);
        Assert.Equal(expected.Islands, actual.Islands);
        Assert.Equal((expected.IslandCount, expected.HoleCount, expected.HoleArea), (actual.IslandCount, actual.HoleCount, actual.HoleArea));
        Assert.Equal(expected.Holes, actual.Holes);
        Assert.Equal(expected.Coverage.Bounds, actual.Coverage.Bounds);
        var box = expected.Coverage.Bounds;
        for (var y = box.Top - 1; y <= box.Bottom; y++)
        {
            for (var x = box.Left - 70; x < box.Right + 70; x++) Assert.Equal(expected.Coverage[x, y], actual.Coverage[x, y]);
        }
    }
}
