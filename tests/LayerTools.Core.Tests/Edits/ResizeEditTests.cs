using LayerTools.Edits;
using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Edits;

public class ResizeEditTests
{
    private static LayerFile Figure(int width = 100, int height = 60)
    {
        var arm = Painting.Of("Arm L").Rectangle(-5, 10, 45, 40).ToLayer();
        arm.Mask = new LayerMask { Bounds = new Bounds(0, 0, 20, 20), DefaultColor = 255, HasParameters = true, UserFeather = 3 };
        arm.Planes.Add(Raw(PlaneRole.UserMask, [.. Enumerable.Range(0, 400).Select(i => (byte)(i % 20 < 10 ? 0 : 255))]));
        var file = File("figure.psd", width, height, Group("Body", arm), Pixel("Blank", Bounds.Empty));
        file.Guides = [new Guide(width / 2.0, true), new Guide(20.25, false)];
        file.Ppi = 300;
        return file;
    }

    [Fact]
    public void Everything_is_scaled_together()
    {
        var file = Figure();
        var arm = file.Find("Body/Arm L");

        var plan = new ResizeEdit { Percent = 50 }.Plan(file, []);
        Assert.Equal((100, new Bounds(-5, 10, 40, 50)), (file.Width, arm.Bounds));
        plan.Apply();

        Assert.Equal((50, 30, 25.0, 300.0), (file.Width, file.Height, file.Axis, file.Ppi!.Value));
        Assert.Equal(new Bounds(-3, 5, 20, 25), arm.Bounds);
        Assert.Equal((new Bounds(0, 0, 10, 10), 1.5), (arm.Mask!.Bounds, arm.Mask.UserFeather!.Value));
        Assert.Equal([new Guide(25, true), new Guide(10.125, false)], file.Guides);
        Assert.All(file.GetLayers(), layer => Assert.Equal(["Rescale 100x60 50x30"], ((StubLayerDetail)layer.Detail).Calls));
        Assert.Equal([("Width", "100", "50"), ("Height", "60", "30"), ("Pixels", null, "resampled with Area")], file.Changes.Select(change => (change.Property, change.Old, change.New!)));
        Assert.True(file.IsPictureStale);
        Assert.Empty(plan.Warnings);
    }

    [Fact]
    public void A_mask_goes_on_around_its_rectangle()
    {
        var file = Figure();

        new ResizeEdit { Percent = 150 }.Plan(file, []).Apply();

        var arm = file.Find("Body/Arm L");
        using var reader = new PixelReader(file);
        var row = reader.ReadPlane(arm, PlaneRole.UserMask).AsSpan(15 * 30, 30);
        Assert.Equal((byte)255, row[29]);
        Assert.Equal((byte)0, row[10]);
        // Below the rectangle the mask is white, and a smooth filter lets it in.
        Assert.InRange(reader.ReadPlane(arm, PlaneRole.UserMask)![(29 * 30) + 5], 1, 254);
    }

    [Theory]
    [InlineData(50, 626, 750)]
    [InlineData(25, 312, 376)]
    [InlineData(33.3, 416, 500)]
    [InlineData(200, 2500, 3000)]
    [InlineData(1, 12, 16)]
    public void Both_sides_stay_even(double percent, int width, int height)
    {
        var file = Figure(1250, 1500);

        new ResizeEdit { Percent = percent }.Plan(file, []).Apply();

        Assert.Equal((width, height), (file.Width, file.Height));
        Assert.Equal(file.Axis, file.Guides[0].Position);
    }

    [Fact]
    public void The_resolution_follows_on_demand()
    {
        var file = Figure();

        new ResizeEdit { Height = 30, ScalesPpi = true }.Plan(file, []).Apply();

        Assert.Equal((50, 150.0), (file.Width, file.Ppi!.Value));
        Assert.Contains(file.Changes, change => (change.Property, change.Old, change.New) == ("Ppi", "300", "150"));
    }

    [Theory]
    [InlineData(100, null, null)]
    [InlineData(null, 101, null)]
    [InlineData(null, null, 60)]
    public void A_figure_that_already_is_as_asked_is_left_alone(int? percent, int? width, int? height)
    {
        var file = Figure(101);

        new ResizeEdit { Percent = percent, Width = width, Height = height }.Plan(file, []).Apply();

        Assert.Empty(file.Changes);
        Assert.False(file.IsPictureStale);
    }

    [Theory]
    [InlineData(0.5, null, "1 to 400 %")]
    [InlineData(401.0, null, "1 to 400 %")]
    [InlineData(double.NaN, null, "1 to 400 %")]
    [InlineData(null, 51, "not even")]
    [InlineData(null, 402, "1 to 400 %")]
    public void Sizes_out_of_range_are_refused(double? percent, int? width, string reason) =>
        Assert.Contains(reason, Refused.Plan(Figure(), new ResizeEdit { Percent = percent, Width = width }).Problem);

    [Fact]
    public void What_the_format_cannot_hold_is_refused() => Assert.Contains("30000 px", Refused.Plan(Figure(10_000, 20_000), new ResizeEdit { Percent = 200 }).Problem);

    [Theory]
    [InlineData(ColorMode.Bitmap, 1, "1 bit")]
    [InlineData(ColorMode.Indexed, 8, "palette")]
    public void Colours_that_cannot_be_mixed_are_refused(ColorMode mode, int bitDepth, string reason)
    {
        var file = Figure();
        (file.ColorMode, file.BitDepth) = (mode, bitDepth);

        var error = Refused.Plan(file, new ResizeEdit { Percent = 50 });

        Assert.Contains(reason, error.Problem);
        Assert.Contains("ConvertTo-RigFile", error.Remedy);
    }

    [Fact]
    public void Rectangles_too_large_for_memory_or_coordinates_are_refused_by_name()
    {
        var file = File(Pixel("Far"), Pixel("Wide"));
        file.Find("Far").Bounds = new Bounds(400_000_000, 0, 400_000_010, 5);
        file.Find("Wide").Bounds = new Bounds(0, 0, 700_000, 5);

        var error = Refused.Plan(file, new ResizeEdit { Percent = 400 });

        Assert.Contains("'Far'", error.Problem);
        Assert.Contains("'Wide'", error.Problem);
    }

    [Fact]
    public void What_keeps_its_size_is_warned_about()
    {
        var file = File(Pixel("A"), Pixel("B"));
        ((StubLayerDetail)file.Find("B").Detail).KeptSize = "its effects";

        var warning = Assert.Single(new ResizeEdit { Percent = 50 }.Plan(file, []).Warnings);

        Assert.Contains("its effects, of 'B'", warning);
        Assert.Contains("ConvertTo-RigFile", warning);
    }

    [Fact]
    public void A_damaged_channel_or_a_stop_changes_nothing()
    {
        var file = Figure();
        var arm = file.Find("Body/Arm L");
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => new ResizeEdit { Percent = 50, Cancellation = stopped.Token }.Plan(file, []).Apply());
        arm.Planes[1] = new Plane(PlaneRole.Color0, (int)Compression.PackBits, new MemoryBytes([0, 1]));

        Assert.Throws<LayeredFileException>(() => new ResizeEdit { Percent = 50 }.Plan(file, []).Apply());

        Assert.Equal((100, new Bounds(-5, 10, 40, 50)), (file.Width, arm.Bounds));
        Assert.Empty(file.Changes);
    }
}
