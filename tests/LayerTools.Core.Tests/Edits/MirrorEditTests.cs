using LayerTools.Edits;
using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Edits;

public class MirrorEditTests
{
    // before | after; lists are front to back, a star is a clipped layer. The canvas is 100 px wide.
    public static TheoryData<string, LayerFile, string> Trees() => new()
    {
        {
            "directly behind the original",
            ModelBuilder.File(ModelBuilder.Pixel("Hat"), ModelBuilder.Pixel("Ear L"), ModelBuilder.Pixel("Head")),
            "Hat Ear_L Ear_R Head"
        },
        {
            "parts that have their opposite, and parts of no side, are left alone",
            ModelBuilder.File(ModelBuilder.Pixel("Ear R"), ModelBuilder.Pixel("Lip"), ModelBuilder.Pixel("Ear L"), ModelBuilder.Pixel("Horn R")),
            "Ear_R Lip Ear_L Horn_R"
        },
        {
            "swapped names all the way down, also where they say no side",
            ModelBuilder.File(ModelBuilder.Group("Eye L", ModelBuilder.Pixel("Lash_l"), ModelBuilder.Group("Left iris", ModelBuilder.Pixel("瞳左")), ModelBuilder.Pixel("White"))),
            "Eye_L(Lash_l Left_iris(瞳左) White) Eye_R(Lash_r Right_iris(瞳右) White)"
        },
        {
            "a group without a side is entered",
            ModelBuilder.File(ModelBuilder.Group("Head", ModelBuilder.Pixel("Ear L"), ModelBuilder.Pixel("Nose"))),
            "Head(Ear_L Ear_R Nose)"
        },
        {
            "into the opposite group, where it is there",
            ModelBuilder.File(ModelBuilder.Group("Arm L", ModelBuilder.Pixel("Hand L")), ModelBuilder.Group("Arm R")),
            "Arm_L(Hand_L) Arm_R(Hand_R)"
        },
        {
            "at the corresponding place in it: behind the opposite of what is in front",
            ModelBuilder.File(
                ModelBuilder.Group("Arm L", ModelBuilder.Pixel("Sleeve L"), ModelBuilder.Pixel("Hand L"), ModelBuilder.Pixel("Bone L")),
                ModelBuilder.Group("Arm R", ModelBuilder.Pixel("Patch"), ModelBuilder.Pixel("Sleeve R"), ModelBuilder.Pixel("Stain"), ModelBuilder.Pixel("Bone R"))),
            "Arm_L(Sleeve_L Hand_L Bone_L) Arm_R(Patch Sleeve_R Hand_R Stain Bone_R)"
        },
        {
            "or in front of the opposite of what is behind",
            ModelBuilder.File(
                ModelBuilder.Group("Arm L", ModelBuilder.Pixel("Hand L"), ModelBuilder.Pixel("Bone L")),
                ModelBuilder.Group("Arm R", ModelBuilder.Pixel("Patch"), ModelBuilder.Clipped("Shine"), ModelBuilder.Pixel("Bone R"))),
            "Arm_L(Hand_L Bone_L) Arm_R(Patch Hand_R Shine* Bone_R)"
        },
        {
            "several parts keep their order in the opposite group",
            ModelBuilder.File(
                ModelBuilder.Group("Arm L", ModelBuilder.Pixel("Nail L"), ModelBuilder.Pixel("Hand L"), ModelBuilder.Pixel("Cuff L"), ModelBuilder.Pixel("Bone L")),
                ModelBuilder.Group("Arm R", ModelBuilder.Pixel("Cuff R"))),
            "Arm_L(Nail_L Hand_L Cuff_L Bone_L) Arm_R(Nail_R Hand_R Cuff_R Bone_R)"
        },
        {
            "a layer without a side belongs to the sided group it is in",
            ModelBuilder.File(
                ModelBuilder.Group("Arm L", ModelBuilder.Pixel("Sleeve"), ModelBuilder.Group("Bits", ModelBuilder.Pixel("Ring"), ModelBuilder.Pixel("Bead L"))),
                ModelBuilder.Group("Arm R", ModelBuilder.Group("Bits", ModelBuilder.Pixel("Ring")))),
            "Arm_L(Sleeve Bits(Ring Bead_L)) Arm_R(Sleeve Bits(Ring Bead_R))"
        },
        {
            "a base takes the layers clipped to it along",
            ModelBuilder.File(ModelBuilder.Pixel("Hat"), ModelBuilder.Clipped("Shade L"), ModelBuilder.Clipped("Light"), ModelBuilder.Pixel("Ear L"), ModelBuilder.Pixel("Head")),
            "Hat Shade_L* Light* Ear_L Shade_R* Light* Ear_R Head"
        },
        {
            "never into the middle of a run",
            ModelBuilder.File(ModelBuilder.Pixel("Ear L"), ModelBuilder.Clipped("Blush"), ModelBuilder.Pixel("Head")),
            "Ear_L Ear_R Blush* Head"
        },
        {
            "a clipped layer without its base stays clipped to the same base",
            ModelBuilder.File(ModelBuilder.Clipped("Line"), ModelBuilder.Clipped("Blush L"), ModelBuilder.Clipped("Tone"), ModelBuilder.Pixel("Head")),
            "Line* Blush_L* Blush_R* Tone* Head"
        },
        {
            "or goes to the opposite of its base",
            ModelBuilder.File(
                ModelBuilder.Clipped("Line L"), ModelBuilder.Clipped("Blush L"), ModelBuilder.Pixel("Ear L"),
                ModelBuilder.Clipped("Line R"), ModelBuilder.Clipped("Scratch"), ModelBuilder.Pixel("Ear R")),
            "Line_L* Blush_L* Ear_L Line_R* Blush_R* Scratch* Ear_R"
        },
        {
            "clipped layers of no side are not added to a finished part",
            ModelBuilder.File(ModelBuilder.Clipped("Shine"), ModelBuilder.Pixel("Ear L"), ModelBuilder.Pixel("Ear R")),
            "Shine* Ear_L Ear_R"
        },
        {
            "a group is a base too",
            ModelBuilder.File(ModelBuilder.Clipped("Shade"), ModelBuilder.Group("Ear L", ModelBuilder.Pixel("Tip"))),
            "Shade* Ear_L(Tip) Shade* Ear_R(Tip)"
        },
    };

    [Theory]
    [MemberData(nameof(Trees), DisableDiscoveryEnumeration = true)]
    public void Reflections_go_where_they_belong(string rule, LayerFile file, string expected)
    {
        Mirror(file, new MirrorEdit());
        Assert.True(expected == file.Sketch(), $"{rule}: {file.Sketch()}");
        Assert.Equal(Enumerable.Range(1, file.LayerCount), file.GetLayers().Select(layer => layer.LayerNumber));

        // A second run finds nothing to do.
        Assert.Empty(new MirrorEdit().Plan(file, [.. file.GetLayers()]).Steps);
    }

    [Fact]
    public void From_the_right_goes_the_other_way()
    {
        var file = ModelBuilder.File(ModelBuilder.Pixel("Ear R"), ModelBuilder.Pixel("Horn L"));
        Mirror(file, new MirrorEdit { From = Side.Right });
        Assert.Equal("Ear_R Ear_L Horn_L", file.Sketch());
    }

    [Fact]
    public void Only_chosen_parts_are_reflected_and_the_others_are_told()
    {
        var file = ModelBuilder.File(ModelBuilder.Pixel("Ear L"), ModelBuilder.Pixel("Horn L"), ModelBuilder.Pixel("Nose"), ModelBuilder.Pixel("Eye L"), ModelBuilder.Pixel("Eye R"));
        var plan = new MirrorEdit().Plan(file, [file.Find("Nose"), file.Find("Horn L"), file.Find("Eye L")]);
        plan.Apply();
        Assert.Equal("Ear_L Horn_L Horn_R Nose Eye_L Eye_R", file.Sketch());
        Assert.Contains(plan.Warnings, text => text.Contains("'Nose'") && text.Contains("Left"));
        Assert.Contains(plan.Warnings, text => text.Contains("'Eye L'") && text.Contains("-Existing Replace"));
    }

    [Fact]
    public void A_part_inside_a_group_that_is_not_chosen_is_found()
    {
        var file = ModelBuilder.File(
            ModelBuilder.Group("Arm L", ModelBuilder.Pixel("Sleeve"), ModelBuilder.Pixel("Hand L")), ModelBuilder.Group("Leg L", ModelBuilder.Pixel("Shoe L")), ModelBuilder.Group("Arm R"));
        Mirror(file, new MirrorEdit(), file.Find("Arm L/Hand L"), file.Find("Leg L/Shoe L"));
        Assert.Equal("Arm_L(Sleeve Hand_L) Leg_L(Shoe_L Shoe_R) Arm_R(Hand_R)", file.Sketch());
    }

    [Fact]
    public void Planning_changes_nothing_and_unpacks_nothing()
    {
        var part = ModelBuilder.Pixel("Ear L");
        part.Planes = [new Plane(PlaneRole.Alpha, 7, new MemoryBytes([1]))];
        var file = ModelBuilder.File(part);
        var plan = new MirrorEdit().Plan(file, [part]);
        Assert.Equal("Ear_L", file.Sketch());
        Assert.Equal("Ear R", Assert.Single(plan.Steps).New);
        Assert.True(plan.ChangesPicture);
    }

    [Fact]
    public void The_results_are_the_reflections()
    {
        var file = ModelBuilder.File(ModelBuilder.Clipped("Shade"), ModelBuilder.Pixel("Ear L"), ModelBuilder.Group("Head", ModelBuilder.Group("Eye L", ModelBuilder.Pixel("Iris"))));
        var plan = Mirror(file, new MirrorEdit());
        Assert.Equal(["Shade", "Ear R", "Head/Eye R"], plan.Results!.Select(layer => layer.LayerPath));
        Assert.All(plan.Results!, layer => Assert.Same(file, layer.GetFile()));
        Assert.Equal(
            ["Shade: new 'Shade'", "Ear R: new 'Ear R'", "Head/Eye R: new 'Head/Eye R'", "Head/Eye R/Iris: new 'Head/Eye R/Iris'"],
            file.Changes.Select(change => $"{change.LayerPath}: {(change.Old is null ? "new" : change.Old)} '{change.New}'"));
        Assert.Equal(file.Changes.Select(change => change.Id), plan.Results!.SelectMany(layer => new[] { layer }.Concat(layer.GetLayers())).Select(layer => layer.Id));
    }

    [Fact]
    public void Reflections_get_ids_that_nothing_has_and_no_marks()
    {
        var file = ModelBuilder.File(ModelBuilder.Group("Eye L", ModelBuilder.Pixel("Iris", mark: Mark.Green)), ModelBuilder.Pixel("Head"));
        file.Find("Eye L").Mark = Mark.Blue;
        file.Find("Head").Id = 40;
        Mirror(file, new MirrorEdit());
        Assert.Equal([1, 2, 41, 42, 40], file.GetLayers().Select(layer => layer.Id));
        Assert.Equal([Mark.Blue, Mark.Green, Mark.None, Mark.None, Mark.None], file.GetLayers().Select(layer => layer.Mark));
    }

    [Fact]
    public void Where_the_largest_id_is_used_up_free_ones_are_found()
    {
        var file = ModelBuilder.File(ModelBuilder.Pixel("Ear L"), ModelBuilder.Pixel("Head"));
        file.Find("Head").Id = int.MaxValue;
        Mirror(file, new MirrorEdit());
        Assert.Equal([1, 2, int.MaxValue], file.GetLayers().Select(layer => layer.Id));
    }

    [Fact]
    public void All_else_is_copied()
    {
        var part = ModelBuilder.Pixel("Ear L");
        (part.OpacityByte, part.FillOpacity, part.BlendMode, part.Locked, part.Visible) = (100, 50, BlendMode.Multiply, true, false);
        var file = ModelBuilder.File(part);
        var plan = Mirror(file, new MirrorEdit());
        var copy = Assert.Single(plan.Results!);
        Assert.Equal((100, 50, BlendMode.Multiply, true, false), (copy.OpacityByte, copy.FillOpacity, copy.BlendMode, copy.Locked, copy.Visible));
        Assert.False(plan.ChangesPicture);
    }

    [Theory]
    [InlineData(null, 100)]
    [InlineData(40.5, 81)]
    [InlineData(-3.0, -6)]
    public void Paths_are_reflected_on_the_copy_alone(double? axis, int doubled)
    {
        var file = ModelBuilder.File(ModelBuilder.Pixel("Ear L"));
        var copy = Mirror(file, new MirrorEdit { Axis = axis }).Results![0];
        Assert.Equal([$"Reflect {doubled} 100"], ((StubLayerDetail)copy.Detail).Calls);
        Assert.Empty(((StubLayerDetail)file.Find("Ear L").Detail).Calls);
        Assert.Equal((doubled - 14, doubled - 10), (copy.Bounds.Left, copy.Bounds.Right));
    }

    [Theory]
    [InlineData(LayerKind.Text)]
    [InlineData(LayerKind.Placed)]
    public void Live_content_becomes_plain_pixels(LayerKind kind)
    {
        var part = ModelBuilder.Pixel("Badge L");
        part.Kind = kind;
        var empty = ModelBuilder.Other(kind, "Word L");
        var file = ModelBuilder.File(part, empty);
        var plan = Mirror(file, new MirrorEdit());
        Assert.Equal((kind, LayerKind.Pixel), (part.Kind, plan.Results![0].Kind));
        Assert.Contains("DropLiveContent", ((StubLayerDetail)plan.Results[0].Detail).Calls);
        Assert.Contains(plan.Warnings, text => text.Contains("plain pixels") && text.Contains("'Badge L', 'Word L'"));
        Assert.Contains(plan.Warnings, text => text.Contains("are empty: 'Word L'."));
    }

    [Fact]
    public void Effects_with_a_direction_are_kept_and_told()
    {
        var part = ModelBuilder.Pixel("Ear L");
        ((StubLayerDetail)part.Detail).Uses = LayerFeatures.Effects | LayerFeatures.DirectedEffects;
        var round = ModelBuilder.Pixel("Horn L");
        ((StubLayerDetail)round.Detail).Uses = LayerFeatures.Effects;
        var plan = Mirror(ModelBuilder.File(part, round), new MirrorEdit());
        Assert.Contains("direction", Assert.Single(plan.Warnings));
        Assert.Contains("'Ear L'.", plan.Warnings[0]);
        Assert.Equal(LayerFeatures.Effects | LayerFeatures.DirectedEffects, plan.Results![0].Detail.Features);
    }

    [Fact]
    public void Fills_and_shapes_stay_live()
    {
        var plan = Mirror(ModelBuilder.File(ModelBuilder.Other(LayerKind.Shape, "Star L")), new MirrorEdit());
        Assert.Equal(LayerKind.Shape, plan.Results![0].Kind);
        Assert.DoesNotContain("DropLiveContent", ((StubLayerDetail)plan.Results[0].Detail).Calls);
        Assert.Contains("'Star L'", Assert.Single(plan.Warnings));
    }

    [Fact]
    public void Names_that_another_group_holds_are_told()
    {
        var file = ModelBuilder.File(ModelBuilder.Group("Head", ModelBuilder.Pixel("Ear L")), ModelBuilder.Group("Back", ModelBuilder.Pixel("Ear R")));
        var plan = Mirror(file, new MirrorEdit());
        Assert.Equal("Head(Ear_L Ear_R) Back(Ear_R)", file.Sketch());
        Assert.Contains("'Back/Ear R'", Assert.Single(plan.Warnings));
    }

    [Fact]
    public void Clipped_layers_whose_opposite_is_there_stay_behind_and_are_told()
    {
        var file = ModelBuilder.File(ModelBuilder.Clipped("Shade L"), ModelBuilder.Pixel("Ear L"), ModelBuilder.Pixel("Shade R"));
        var plan = Mirror(file, new MirrorEdit());
        Assert.Equal("Shade_L* Ear_L Ear_R Shade_R", file.Sketch());
        Assert.Contains("'Shade L'", Assert.Single(plan.Warnings));
    }

    [Fact]
    public void A_second_of_several_twins_gets_its_own_reflection()
    {
        var file = ModelBuilder.File(ModelBuilder.Pixel("Strand L"), ModelBuilder.Pixel("Strand L"));
        Mirror(file, new MirrorEdit());
        Assert.Equal("Strand_L Strand_R Strand_L Strand_R", file.Sketch());
        Assert.Empty(new MirrorEdit().Plan(file, [.. file.GetLayers()]).Steps);
    }

    internal static EditPlan Mirror(LayerFile file, MirrorEdit edit, params Layer[] chosen)
    {
        var plan = edit.Plan(file, chosen.Length > 0 ? chosen : [.. file.GetLayers()]);
        plan.Apply();
        return plan;
    }
}
