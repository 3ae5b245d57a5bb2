using LayerTools.Edits;
using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Pixels;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Edits;

public class MirrorExistingTests
{
    private static readonly MirrorEdit Replacing = new() { Existing = MirrorExisting.Replace };

    [Fact]
    public void Replace_keeps_id_name_and_place_and_clears_the_mark()
    {
        var file = ModelBuilder.File(
            ModelBuilder.Pixel("Ear L", new Bounds(10, 5, 13, 9), mark: Mark.Red), ModelBuilder.Pixel("Nose"), ModelBuilder.Pixel("ear r", mark: Mark.Green), ModelBuilder.Pixel("Head"));
        var old = file.Find("ear r");
        var plan = MirrorEditTests.Mirror(file, Replacing);
        Assert.Equal("Ear_L Nose ear_r Head", file.Sketch());
        var copy = Assert.Single(plan.Results!);
        Assert.NotSame(old, copy);
        Assert.Equal((3, 3, Mark.None, new Bounds(87, 5, 90, 9)), (copy.Id!.Value, copy.LayerNumber, copy.Mark, copy.Bounds));
        Assert.Null(old.GetFile());
        Assert.Equal(
            ["3 ear r: Pixels '4 x 2 at 10, 10' -> '3 x 4 at 87, 5, reflected from 'Ear L''", "3 ear r: Mark 'Green' -> 'None'"],
            file.Changes.Select(change => $"{change.Id} {change}"));
    }

    [Fact]
    public void Replace_goes_through_groups_part_by_part()
    {
        var file = ModelBuilder.File(
            ModelBuilder.Group("Arm L", ModelBuilder.Pixel("Sleeve"), ModelBuilder.Pixel("Hand L")),
            ModelBuilder.Group("Arm R", ModelBuilder.Pixel("Ring"), ModelBuilder.Pixel("Sleeve"), ModelBuilder.Pixel("Hand R")));
        var (group, ring) = (file.Find("Arm R"), file.Find("Arm R/Ring"));
        var plan = MirrorEditTests.Mirror(file, Replacing);
        Assert.Equal("Arm_L(Sleeve Hand_L) Arm_R(Ring Sleeve Hand_R)", file.Sketch());
        Assert.Equal(["Arm R/Sleeve", "Arm R/Hand R"], plan.Results!.Select(layer => layer.LayerPath));
        Assert.Same(group, file.Find("Arm R"));
        Assert.Same(ring, file.Find("Arm R/Ring"));
        Assert.Equal(Enumerable.Range(1, 7), file.GetLayers().Select(layer => layer.Id!.Value));
    }

    [Fact]
    public void Replace_of_a_base_brings_its_clipped_layers()
    {
        var file = ModelBuilder.File(
            ModelBuilder.Clipped("Light"), ModelBuilder.Clipped("Tone"), ModelBuilder.Clipped("Shade L"), ModelBuilder.Pixel("Ear L"),
            ModelBuilder.Clipped("Tone"), ModelBuilder.Clipped("Freckles"), ModelBuilder.Pixel("Ear R"));
        var plan = MirrorEditTests.Mirror(file, Replacing, file.Find("Ear L"));
        Assert.Equal("Light* Tone* Shade_L* Ear_L Light* Tone* Shade_R* Freckles* Ear_R", file.Sketch());
        Assert.Equal([5, 7], plan.Results!.Select(layer => layer.Id!.Value).Where(id => id <= 7).Order());
    }

    [Fact]
    public void Skip_is_the_default()
    {
        var file = ModelBuilder.File(ModelBuilder.Pixel("Ear L"), ModelBuilder.Pixel("Ear R"));
        var plan = new MirrorEdit().Plan(file, [.. file.GetLayers()]);
        Assert.Empty(plan.Steps);
        Assert.Empty(plan.Results!);
        Assert.Empty(plan.Warnings);
        Assert.False(plan.ChangesPicture);
    }

    [Fact]
    public void Error_names_every_pair()
    {
        var file = ModelBuilder.File(ModelBuilder.Pixel("Ear L"), ModelBuilder.Pixel("Ear R"), ModelBuilder.Pixel("Horn L"), ModelBuilder.Pixel("Eye L"), ModelBuilder.Pixel("Eye R"));
        var error = Refused.Plan(file, new MirrorEdit { Existing = MirrorExisting.Error }, [.. file.GetLayers()]);
        Assert.Contains("'Ear L' has its opposite 'Ear R'", error.Message);
        Assert.Contains("'Eye L' has its opposite 'Eye R'", error.Message);
        Assert.DoesNotContain("Horn", error.Message);
    }

    [Fact]
    public void A_group_does_not_replace_a_layer()
    {
        var file = ModelBuilder.File(ModelBuilder.Group("Ear L", ModelBuilder.Pixel("Tip")), ModelBuilder.Pixel("Ear R"));
        Assert.Contains("only one is a group", Refused.Plan(file, Replacing, [.. file.GetLayers()]).Message);
    }

    [Fact]
    public void Two_parts_do_not_replace_one()
    {
        var file = ModelBuilder.File(ModelBuilder.Pixel("Ear L"), ModelBuilder.Pixel("Ear L"), ModelBuilder.Pixel("Ear R"));
        Assert.Contains("opposite of several", Refused.Plan(file, Replacing, [.. file.GetLayers()]).Message);
    }

    [Theory]
    [InlineData(10.25)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(1e12)]
    public void An_axis_between_half_pixels_is_refused(double axis)
    {
        var file = ModelBuilder.File(ModelBuilder.Pixel("Ear L"));
        Assert.Contains("0.5", Refused.Plan(file, new MirrorEdit { Axis = axis }, [.. file.GetLayers()]).Message);
    }

    [Fact]
    public void A_side_that_is_none_is_refused() =>
        Refused.Plan(ModelBuilder.File(ModelBuilder.Pixel("Ear L")), new MirrorEdit { From = Side.None });

    [Fact]
    public void A_reflection_beyond_all_coordinates_is_refused()
    {
        var part = ModelBuilder.Pixel("Ear L");
        part.Bounds = new Bounds(int.MinValue, 0, int.MinValue + 4, 2);
        Assert.Contains("'Ear L'", Refused.Plan(ModelBuilder.File(part), new MirrorEdit(), part).Message);
    }

    [Fact]
    public void A_name_that_would_become_too_long_is_refused()
    {
        var part = ModelBuilder.Pixel(new string('x', 250) + " left");
        Assert.Contains("256 characters", Refused.Plan(ModelBuilder.File(part), new MirrorEdit(), part).Message);
    }

    [Fact]
    public void Damaged_pixels_leave_the_tree_as_it_was()
    {
        var damaged = ModelBuilder.Pixel("Horn L");
        damaged.Planes[2] = new Plane(PlaneRole.Color1, (int)Compression.PackBits, new MemoryBytes([0, 1]));
        var file = ModelBuilder.File(ModelBuilder.Pixel("Ear L"), damaged, ModelBuilder.Pixel("Eye L"), ModelBuilder.Pixel("Eye R"));
        var before = file.Sketch();
        var layers = file.GetLayers().ToList();
        var plan = Replacing.Plan(file, layers);
        var error = Assert.Throws<LayeredFileException>(plan.Apply);
        Assert.Equal(LayeredFileErrorKind.Damaged, error.Kind);
        Assert.Contains("Horn L", error.Message);
        Assert.Equal(before, file.Sketch());
        Assert.Equal(layers, file.GetLayers());
        Assert.Empty(file.Changes);
        Assert.False(file.IsPictureStale);
    }
}
