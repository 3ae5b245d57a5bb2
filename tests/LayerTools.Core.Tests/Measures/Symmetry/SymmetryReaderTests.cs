using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Measures.Symmetry;
using LayerTools.Model;
using LayerTools.Pixels.Colors;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Measures.Symmetry;

public sealed class SymmetryReaderTests
{
    private const int Width = 400;

    private static readonly CancellationToken None = TestContext.Current.CancellationToken;

    private static readonly Shape.Contains Arm = (x, y) => Shape.Ellipse(90, 120, 25, 70)(x, y) && !Shape.Ellipse(110, 100, 12, 30)(x, y);

    [Fact]
    public void A_pair_that_was_reflected_exactly_agrees_in_full()
    {
        var result = Assert.Single(Read(File(Draw("Arm L", Arm), Draw("Arm R", Arm.Reflect(Width / 2.0))), skipFigure: true));
        Assert.Equal((SymmetryKind.Pair, "Arm L", 1, "Arm R", 2), (result.Kind, result.LayerPath, result.LayerNumber!.Value, result.OppositePath, result.OppositeNumber!.Value));
        Assert.Equal((100.0, 0.0, 200.0, 0.0, 100.0), (result.Iou, result.ColorDifference, result.Axis, result.AxisOffset, result.BestIou));
        Assert.Equal((0, 0, 0.0), (result.WidthDifference!.Value, result.HeightDifference!.Value, result.AreaDifference!.Value));
        Assert.Equal(0, result.Angle!.Value, 0.2);
        Assert.Empty(result.Note);
    }

    [Theory]
    [InlineData(203)]
    [InlineData(199.5)]
    [InlineData(200.3)]
    public void A_pair_off_the_axis_says_how_far(double axis)
    {
        var result = Assert.Single(Read(File(Draw("Arm L", Arm), Draw("Arm R", Arm.Reflect(axis))), skipFigure: true));
        Assert.Equal(axis, result.Axis!.Value, 0.05);
        Assert.Equal(axis - 200, result.AxisOffset!.Value, 0.05);
        Assert.True(result.Iou < 100 && result.BestIou > result.Iou, $"{result.Iou} {result.BestIou}");
    }

    [Fact]
    public void Coverage_and_colours_are_those_of_the_formulas()
    {
        // 2 x 1 px each, canvas of 8: a pixel of 255 against 102, and one of 51 against nothing.
        var left = Make("Eye L", new Bounds(1, 0, 3, 1), [255, 51], (200, 40, 30));
        var right = Make("Eye R", new Bounds(6, 0, 7, 1), [102], (190, 60, 30));
        var result = Assert.Single(new SymmetryReader().Read(ModelBuilder.File("eyes.psd", 8, 1, left, right), [left], None));
        Assert.Equal(Math.Round(100 * 102 / (255.0 + 51), 2), result.Iou);
        Assert.Equal(Ciede2000.Measure(CieLab.FromSrgb(200, 40, 30), CieLab.FromSrgb(190, 60, 30)), result.ColorDifference!.Value, 0.005);
        Assert.Equal((1, 0), (result.WidthDifference!.Value, result.HeightDifference!.Value));
        Assert.Equal(Math.Round(100 * (306 - 102) / 306.0, 2), result.AreaDifference);
        Assert.Null(result.Angle);
        Assert.Contains("Too little", result.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void An_odd_width_has_its_axis_in_the_middle_of_a_column()
    {
        var mouth = Make("Mouth", new Bounds(2, 0, 5, 1), [255, 255, 255], (10, 20, 30));
        mouth.Planes.RemoveAll(plane => plane.Role == PlaneRole.Color0);
        mouth.Planes.Add(ModelBuilder.Raw(PlaneRole.Color0, [10, 99, 60]));
        var result = Assert.Single(new SymmetryReader().Read(ModelBuilder.File("mouth.psd", 7, 1, mouth), [mouth], None));
        Assert.Equal((SymmetryKind.Central, 100.0, 3.5, 3.5), (result.Kind, result.Iou, result.CanvasAxis, result.Axis));

        // Two of three pixels differ from what lies across.
        Assert.Equal(Ciede2000.Measure(CieLab.FromSrgb(10, 20, 30), CieLab.FromSrgb(60, 20, 30)) * 2 / 3, result.ColorDifference!.Value, 0.005);
        Assert.Null(result.WidthDifference);
        Assert.Null(result.AreaDifference);
    }

    [Fact]
    public void The_figure_comes_first_and_leaves_out_what_is_no_part()
    {
        var body = Draw("Body", Shape.Body(200, 20));
        var backdrop = Make("Backdrop", new Bounds(0, 0, 300, 260), null, (90, 90, 90));
        var sketch = Draw("Sketch", Shape.Box(0, 0, 60, 60));
        var hidden = Draw("Tail", Shape.Box(0, 0, 60, 60));
        hidden.Visible = false;
        var results = new SymmetryReader().Read(File(sketch, body, hidden, backdrop), cancellation: None);
        Assert.Equal(["Figure ", "Central Body", "Central Tail"], results.Select(result => $"{result.Kind} {result.LayerPath}"));
        Assert.Equal((100.0, 200.0), (results[0].Iou, results[0].Axis));
        Assert.Null(results[0].LayerNumber);
        Assert.Equal(0, results[0].Angle!.Value, 0.2);
        Assert.Equal((0.0, 30.0), (results[2].Iou, results[2].Axis));
        Assert.Null(results[2].ColorDifference);
    }

    [Fact]
    public void What_is_opaque_all_over_the_canvas_is_a_backdrop_by_any_name()
    {
        var paper = Make("Layer 1", new Bounds(0, 0, Width, 260), null, (255, 255, 255));
        paper.Planes.RemoveAll(plane => plane.Role == PlaneRole.Alpha);
        var results = new SymmetryReader().Read(File(Draw("Body", Shape.Body(150, 20)), paper), cancellation: None);
        Assert.Equal(2, results.Count);
        Assert.Equal(150, results[0].Axis!.Value, 0.05);
    }

    [Fact]
    public void Either_of_a_pair_stands_for_both_and_sides_of_groups_count()
    {
        var file = File(
            ModelBuilder.Group("Arm R", Draw("Hand", Arm.Reflect(200))),
            ModelBuilder.Group("Arm L", Draw("Hand", Arm)),
            Draw("Horn L", Arm));
        var results = Read(file, skipFigure: true);
        Assert.Equal(["Arm L/Hand|Arm R/Hand", "Horn L|"], results.Select(result => $"{result.LayerPath}|{result.OppositePath}"));
        Assert.Contains("nowhere", results[1].Note, StringComparison.Ordinal);
        Assert.Null(results[1].Iou);
        Assert.Equal("Arm L/Hand", Assert.Single(new SymmetryReader().Read(file, [file.Find("Arm R")], None)).LayerPath);
    }

    [Fact]
    public void What_is_empty_or_does_not_meet_says_so()
    {
        var file = File(Draw("Arm L", Shape.Box(10, 10, 40, 40)), Draw("Arm R", Shape.Box(350, 100, 380, 130)), Draw("Blush", Shape.Box(-9, -9, -5, -5)));
        var results = Read(file, skipFigure: true);
        Assert.Equal((0.0, null, null), (results[0].Iou, results[0].Axis, results[0].BestIou));
        Assert.Contains("No upright axis", results[0].Note, StringComparison.Ordinal);
        Assert.Contains("Nothing is painted on Blush", results[1].Note, StringComparison.Ordinal);
        Assert.Null(results[1].Iou);
    }

    [Fact]
    public void A_mask_cuts_a_part()
    {
        // The mask hides the left half of a box of 40 px, so that what is left lies in the middle.
        var plain = Draw("Belt", Shape.Box(160, 50, 240, 80));
        var masked = Draw("Belt", Shape.Box(120, 50, 240, 80));
        masked.Mask = new LayerMask { Bounds = new Bounds(160, 0, Width, 260), DefaultColor = 0 };
        masked.Planes.Add(ModelBuilder.Raw(PlaneRole.UserMask, Enumerable.Repeat(byte.MaxValue, (Width - 160) * 260).ToArray()));
        Assert.Equal(100, Read(File(plain), skipFigure: true)[0].Iou);
        Assert.Equal(100, Read(File(masked), skipFigure: true)[0].Iou);
    }

    [Fact]
    public void Results_do_not_depend_on_threads_and_progress_ends_complete()
    {
        var file = File(Draw("Arm L", Arm), Draw("Arm R", Arm.Reflect(201)), Draw("Body", Shape.Body(200, 20)));
        var told = new List<(int, int)>();
        var alone = new SymmetryReader(new SymmetryOptions { Parallelism = 1, Progress = (done, total) => told.Add((done, total)) }).Read(file, cancellation: None);
        Assert.Equal(alone, new SymmetryReader(new SymmetryOptions { Parallelism = 4 }).Read(file, cancellation: None));
        Assert.Equal([(1, 3), (2, 3), (3, 3)], told);
    }

    [Fact]
    public void It_stops_when_asked_to()
    {
        using var stopping = new CancellationTokenSource();
        stopping.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => new SymmetryReader().Read(File(Draw("Body", Shape.Body(200, 20))), cancellation: stopping.Token));
    }

    [Fact]
    public void A_canvas_larger_than_the_limit_is_refused_in_words()
    {
        var file = ModelBuilder.File("huge.psb", 300_000, 300_000, Draw("Body", Shape.Body(200, 20)));
        var error = Assert.Throws<LayeredFileException>(() => new SymmetryReader().Read(file, cancellation: None));
        Assert.Equal(LayeredFileErrorKind.LimitExceeded, error.Kind);
        Assert.Contains(nameof(ReadLimits.MemoryMegabytes), error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_file_there_is_can_be_measured_or_says_why_not() => Assert.All(SharedFiles.All, path =>
    {
        if (TryRead(path) is not { } file) return;
        try
        {
            foreach (var result in new SymmetryReader().Read(file, cancellation: None))
            {
                Assert.True(result.Iou is null or (>= 0 and <= 100), path);
                Assert.True(result.ColorDifference is null or (>= 0 and < 150), path);
                Assert.True(result.Angle is null or (>= -45.5 and <= 45.5), path);
                Assert.True(result.Iou is not null || result.Note.Length > 0, path);
            }
        }
        catch (LayeredFileException error)
        {
            Assert.Contains(error.Kind, new[] { LayeredFileErrorKind.NotSupported, LayeredFileErrorKind.LimitExceeded });
        }
    });

    /// <summary>Some real files are damaged and are no matter of measures.</summary>
    private static LayerFile? TryRead(string path)
    {
        try
        {
            return LayerFiles.Read(path);
        }
        catch (LayeredFileException)
        {
            return null;
        }
    }

    private static LayerFile File(params Layer[] layers) => ModelBuilder.File("figure.psd", Width, 260, layers);

    private static List<LayerSymmetry> Read(LayerFile file, bool skipFigure) => [.. new SymmetryReader().Read(file, cancellation: None).Skip(skipFigure ? 1 : 0)];

    private static Layer Draw(string name, Shape.Contains shape)
    {
        var canvas = new Bounds(0, 0, Width, 260);
        return Make(name, canvas, Shape.Draw(canvas, shape).Values, (180, 120, 90));
    }

    private static Layer Make(string name, Bounds bounds, byte[]? alpha, (byte Red, byte Green, byte Blue) color)
    {
        var layer = ModelBuilder.Pixel(name, bounds, alpha);
        layer.Planes.RemoveAll(plane => plane.Role >= PlaneRole.Color0);
        foreach (var (role, value) in new[] { (PlaneRole.Color0, color.Red), (PlaneRole.Color1, color.Green), (PlaneRole.Color2, color.Blue) })
        {
            layer.Planes.Add(ModelBuilder.Raw(role, Enumerable.Repeat(value, (int)bounds.Area).ToArray()));
        }

        return layer;
    }
}
