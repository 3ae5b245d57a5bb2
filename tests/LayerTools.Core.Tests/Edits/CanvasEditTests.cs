using LayerTools.Edits;
using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Edits;

public class CanvasEditTests
{
    private static LayerFile Figure(int width = 101)
    {
        var arm = Pixel("Arm", new Bounds(-5, 10, 40, 50));
        arm.Mask = new LayerMask { Bounds = new Bounds(0, 0, 20, 20), PaintedBounds = new Bounds(1, 2, 3, 4) };
        var file = File("figure.psd", width, 60, Group("Body", arm), Pixel("Blank", Bounds.Empty));
        file.Guides = [new Guide(50.5, true), new Guide(20.25, false)];
        return file;
    }

    [Fact]
    public void Everything_moves_together()
    {
        var file = Figure();
        var arm = file.Find("Body/Arm");

        var plan = new CanvasEdit { Width = 110, Height = 70, Shift = (4, -3) }.Plan(file, []);
        Assert.Equal((101, 60), (file.Width, file.Height));
        plan.Apply();

        Assert.Equal((110, 70, 55.0), (file.Width, file.Height, file.Axis));
        Assert.Equal(new Bounds(-1, 7, 44, 47), arm.Bounds);
        Assert.Equal(new Bounds(4, -3, 24, 17), arm.Mask!.Bounds);
        Assert.Equal(new Bounds(5, -1, 7, 1), arm.Mask.PaintedBounds);
        Assert.Equal(Bounds.Empty, file.Find("Blank").Bounds);
        Assert.Equal([new Guide(54.5, true), new Guide(17.25, false)], file.Guides);
        Assert.All(file.GetLayers(), layer => Assert.Equal(["Recanvas 4,-3 101x60 110x70"], ((StubLayerDetail)layer.Detail).Calls));
        Assert.Equal([("Width", "101", "110"), ("Height", "60", "70"), ("Shift", "0, 0", "4, -3")], file.Changes.Select(change => (change.Property, change.Old!, change.New!)));
        Assert.All(file.Changes, change => Assert.Equal((0, null, ""), (change.LayerNumber, change.Id, change.LayerPath)));
        Assert.True(file.IsPictureStale);
        Assert.Empty(plan.Warnings);
    }

    [Fact]
    public void A_shift_and_its_reverse_give_the_file_back()
    {
        var (file, original) = (Figure(100), Figure(100));

        new CanvasEdit { Shift = (-70, 31) }.Plan(file, []).Apply();
        new CanvasEdit { Shift = (70, -31) }.Plan(file, []).Apply();

        Assert.Equal(original.GetLayers().Select(layer => layer.Bounds), file.GetLayers().Select(layer => layer.Bounds));
        Assert.Equal(original.Guides, file.Guides);
    }

    [Theory]
    [InlineData(100, null, 48, 2)]
    [InlineData(100, null, 50, 0)]
    [InlineData(101, null, 48.5, 2)]
    [InlineData(101, 102, 50, 1)]
    [InlineData(101, 102, 51, 0)]
    [InlineData(100, 99, 52.5, -3)]
    [InlineData(100, null, -10, 60)]
    public void The_line_comes_to_lie_on_the_centre(int width, int? newWidth, double x, int shift)
    {
        var file = Figure(width);
        var left = file.Find("Body/Arm").Left;

        new CanvasEdit { Width = newWidth, CenterOn = x }.Plan(file, []).Apply();

        Assert.Equal(left + shift, file.Find("Body/Arm").Left);
        Assert.Equal(file.Axis, x + shift);
        Assert.Equal(20.25, file.Guides[1].Position);
    }

    [Theory]
    [InlineData(100, 48.5, "101 or 99 px")]
    [InlineData(101, 48, "102 or 100 px")]
    [InlineData(30000, 48.5, "29999 px")]
    [InlineData(1, 1, "2 px")]
    public void A_line_that_whole_pixels_cannot_centre_is_refused_with_a_width_that_would_do(int width, double x, string widths)
    {
        var file = Figure(width);

        var error = Refused.Plan(file, new CanvasEdit { CenterOn = x });

        Assert.Contains($"Give a width of {widths} as well.", error.Remedy);
        var better = int.Parse(widths.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
        new CanvasEdit { Width = better, CenterOn = x }.Plan(file, []).Apply();
        Assert.Equal(better, file.Width);
    }

    [Theory]
    [InlineData(48.25)]
    [InlineData(double.NaN)]
    [InlineData(1e30)]
    public void A_line_between_half_pixels_is_refused(double x) => Refused.Plan(Figure(), new CanvasEdit { CenterOn = x });

    [Theory]
    [InlineData("a.psd", 0, 10, false)]
    [InlineData("a.psd", 1, 1, true)]
    [InlineData("a.psd", 10, -1, false)]
    [InlineData("a.psd", 30_000, 30_000, true)]
    [InlineData("a.psd", 30_001, 10, false)]
    [InlineData("a.psb", 300_000, 10, true)]
    [InlineData("a.psb", 10, 300_001, false)]
    public void The_formats_limits_hold(string path, int width, int height, bool isFine)
    {
        var file = File(path, 100, 60, Pixel("A"));
        var edit = new CanvasEdit { Width = width, Height = height };

        if (isFine) Assert.Equal(2, edit.Plan(file, []).Steps.Count);
        else Refused.Plan(file, edit);
    }

    [Fact]
    public void Coordinates_never_overflow_and_every_layer_in_the_way_is_named()
    {
        var file = File(Pixel("A"), Group("Group", Pixel("B")));
        file.Find("A").Bounds = new Bounds(int.MaxValue - 10, 0, int.MaxValue - 1, 5);
        file.Find("Group/B").Mask = new LayerMask { Bounds = new Bounds(0, int.MaxValue - 5, 9, int.MaxValue) };
        file.Guides = [new Guide(67_000_000, true)];

        var error = Refused.Plan(file, new CanvasEdit { Shift = (200_000, 200_000) });

        foreach (var culprit in new[] { "'A'", "'Group/B'", "x = 67000000" }) Assert.Contains(culprit, error.Problem);
    }

    [Fact]
    public void An_odd_width_and_layers_that_now_reach_beyond_the_canvas_are_warned_about()
    {
        var file = File(Pixel("A", new Bounds(90, 0, 100, 10)), Pixel("B", new Bounds(-9, 0, 9, 10)));

        var plan = new CanvasEdit { Width = 95 }.Plan(file, []);

        Assert.Collection(plan.Warnings, warning => Assert.Contains("odd", warning), warning => Assert.EndsWith(": 'A'.", warning));
    }

    [Fact]
    public void Live_content_that_moves_is_warned_about()
    {
        var file = File(Other(LayerKind.Text, "Note"), Pixel("A"));

        Assert.Contains("'Note'", Assert.Single(new CanvasEdit { Shift = (1, 0) }.Plan(file, []).Warnings));
        Assert.Empty(new CanvasEdit { Height = 80 }.Plan(file, []).Warnings);
    }

    [Fact]
    public void A_canvas_that_already_is_as_asked_is_left_alone()
    {
        var file = Figure();

        new CanvasEdit { Width = 101, Shift = (0, 0) }.Plan(file, []).Apply();

        Assert.Empty(file.Changes);
        Assert.False(file.IsPictureStale);
    }
}
