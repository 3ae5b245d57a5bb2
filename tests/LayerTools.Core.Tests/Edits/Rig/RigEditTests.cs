using LayerTools.Edits.Rig;
using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;
using LayerTools.Tests.Pixels.Compositing;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Edits.Rig;

/// <summary>What becomes of the layers of a file that is baked. Invented data.</summary>
public class RigEditTests
{
    private static readonly Bounds Box = new(20, 10, 30, 16);

    [Fact]
    public void A_part_is_trimmed_to_its_paint_and_a_pixel_around()
    {
        var alpha = new byte[60];
        alpha[(2 * 10) + 3] = alpha[(3 * 10) + 5] = 200;
        var file = File(Pixel("Nose", Box, alpha));

        Bake(file);

        Assert.Equal(new Bounds(22, 11, 27, 15), file.Find("Nose").Bounds);
        using var reader = new PixelReader(file);
        var samples = reader.ReadPlane(file.Find("Nose"), PlaneRole.Alpha)!;
        Assert.Equal(200, samples[5 + 1]);
        Assert.Equal(200, samples[10 + 3]);
        Assert.Equal(400, samples.Sum(value => value));
    }

    [Fact]
    public void A_plain_part_keeps_its_very_channels()
    {
        var alpha = new byte[60];
        for (var y = 1; y < 5; y++) alpha.AsSpan((y * 10) + 1, 8).Fill(255);
        var file = File(Pixel("Nose", Box, alpha));
        var planes = file.Find("Nose").Planes.ToList();

        var plan = new RigEdit().Plan(file, []);

        Assert.Empty(plan.Steps);
        plan.Apply();
        Assert.Equal(planes, file.Find("Nose").Planes);
    }

    [Theory]
    [InlineData(0, 255, 255)]
    [InlineData(LayerMask.DisabledFlag, 0, 255)]
    [InlineData(LayerMask.InvertedFlag, 155, 100)]
    [InlineData(0, 100, 100)]
    public void Masks_are_applied(byte flags, byte value, byte expected)
    {
        var file = File(Pixel("Nose", Box).Masked(Box, value, change: mask => mask.Flags = flags));

        var parts = Bake(file).Parts;

        Assert.False(file.Find("Nose").HasMask);
        Assert.Equal(expected, AlphaInTheMiddle(file, "Nose"));
        Assert.Contains("mask", parts[0].Baked);
        Assert.Equal(RigOutcome.Baked, parts[0].Outcome);
    }

    [Fact]
    public void A_mask_of_a_group_goes_into_each_part_in_it()
    {
        var group = Group("Head", Pixel("Eye", Box), Pixel("Face", new Bounds(40, 10, 50, 16))).Masked(new Bounds(0, 0, 100, 60), 100);
        var file = File(group);

        var edit = Bake(file);

        Assert.False(file.Find("Head").HasMask);
        Assert.Equal(100, AlphaInTheMiddle(file, "Head/Eye"));
        Assert.Equal(100, AlphaInTheMiddle(file, "Head/Face"));
        Assert.Contains("mask of the group 'Head'", edit.Parts[1].Baked);
    }

    [Fact]
    public void A_clipped_layer_is_painted_into_its_base()
    {
        var file = File(Clipped("Shadow"), Pixel("Arm"));

        var parts = Bake(file).Parts;

        Assert.Equal("Arm", file.Sketch());
        Assert.Equal([RigOutcome.Merged, RigOutcome.Baked], parts.Select(part => part.Outcome));
        Assert.Equal(0, parts[0].FileDifference);
        Assert.Contains("'Shadow'", parts[1].Baked);
    }

    [Fact]
    public void A_clipped_layer_is_cut_to_its_base()
    {
        var file = File(Pixel("Shadow", new Bounds(0, 0, 100, 60), clipped: true), Pixel("Arm", Box));

        var edit = Bake(file, new RigEdit { Clipping = RigClipping.Cut });

        Assert.Equal("Shadow Arm", file.Sketch());
        Assert.Equal(new Bounds(19, 9, 31, 17), file.Find("Shadow").Bounds);
        Assert.Equal(0, edit.Parts[0].FileDifference);
    }

    [Fact]
    public void Along_soft_edges_a_cut_differs_and_is_refused_by_name()
    {
        var soft = Enumerable.Repeat((byte)128, 60).ToArray();
        var file = File(Pixel("Shadow", new Bounds(0, 0, 100, 60), clipped: true), Pixel("Arm", Box, soft));

        var error = Refused.Plan(file, new RigEdit { Clipping = RigClipping.Cut });

        Assert.Contains("'Shadow'", error.Message);
        Assert.Contains("-AcceptDifference", error.Remedy);
        var edit = new RigEdit { Clipping = RigClipping.Cut, AcceptDifference = true };
        var plan = edit.Plan(file, []);
        Assert.Contains(plan.Warnings, warning => warning.StartsWith("Accepted", StringComparison.Ordinal));
        Assert.True(edit.Parts[0].Difference > 2);
    }

    [Fact]
    public void Hidden_parts_stay_hidden_also_clipped_ones()
    {
        var file = File(Clipped("Blush").With(layer => layer.Visible = false), Pixel("Face"), Pixel("Mouth open").With(layer => layer.Visible = false));

        Bake(file);

        Assert.Equal("Blush Face Mouth_open", file.Sketch());
        Assert.Equal([false, true, false], file.GetLayers().Select(layer => layer.Visible));
    }

    [Fact]
    public void Hidden_parts_can_be_left_out()
    {
        var file = File(Group("Outfit 2", Pixel("Skirt")).With(layer => layer.Visible = false), Pixel("Face"), Pixel("Mouth open").With(layer => layer.Visible = false));

        var edit = Bake(file, new RigEdit { DropHidden = true });

        Assert.Equal("Face", file.Sketch());
        Assert.Equal("hidden", edit.Parts[1].NotBaked);
    }

    [Fact]
    public void Sketches_guides_and_backdrops_are_left_out_by_name()
    {
        var file = File(Pixel("guide"), Group("Sketch", Pixel("Pose")), Pixel("Face"), Pixel("Background"), Pixel("notes"));

        Bake(file, new RigEdit { Drop = layer => layer.Name == "notes" });

        Assert.Equal("Face", file.Sketch());
    }

    [Fact]
    public void What_is_to_be_kept_stays_with_the_groups_around_it()
    {
        var file = File(Group("Sketch", Pixel("Pose"), Pixel("Hand")), Pixel("Face"), Pixel("Background"));

        Bake(file, new RigEdit { Keep = layer => layer.Name is "Hand" or "Background" });

        Assert.Equal("Sketch(Hand) Face Background", file.Sketch());
    }

    [Fact]
    public void Parts_clipped_to_what_is_left_out_go_with_it()
    {
        var file = File(Clipped("Paper"), Pixel("Backdrop"), Pixel("Face"));

        var edit = Bake(file);

        Assert.Equal("Face", file.Sketch());
        Assert.Contains("clipped to 'Backdrop'", edit.Parts[0].NotBaked);
    }

    [Fact]
    public void Empty_parts_go_and_groups_that_held_nothing_else()
    {
        var file = File(Group("Old", Pixel("Nothing", Box, new byte[60])), Group("Later"), Pixel("Face"));

        Bake(file);

        Assert.Equal("Later() Face", file.Sketch());
    }

    [Fact]
    public void Names_become_unique()
    {
        var file = File(Pixel("Hair L"), Group("Hair L", Pixel("hair L"), Pixel("Hair L 2")), Pixel("Hair L"));

        Bake(file);

        Assert.Equal("Hair_L Hair_L(hair_L_3 Hair_L_2) Hair_L_4", file.Sketch());
        Assert.All(file.GetLayers(), layer => Assert.Equal(LayerTools.Names.Side.Left, layer.Side));
    }

    [Fact]
    public void Marks_ids_opacity_locks_and_known_blend_modes_stay()
    {
        var file = File(Pixel("Glow").With(layer => (layer.BlendMode, layer.OpacityByte, layer.Mark, layer.LockFlags) = (BlendMode.LinearDodge, 90, Mark.Red, 4)), Pixel("Face"));
        var id = file.Find("Glow").Id;

        Bake(file);

        var glow = file.Find("Glow");
        Assert.Equal((id, BlendMode.LinearDodge, (byte)90, Mark.Red, 4u), (glow.Id, glow.BlendMode, glow.OpacityByte, glow.Mark, glow.LockFlags));
    }

    [Fact]
    public void Another_blend_mode_stays_where_something_lies_below_and_is_reported()
    {
        var file = File(Pixel("Light").With(layer => layer.BlendMode = BlendMode.Screen), Pixel("Face"), Pixel("Far", new Bounds(60, 30, 70, 40)).With(layer => layer.BlendMode = BlendMode.Overlay));

        var edit = Bake(file);

        Assert.Equal([BlendMode.Screen, BlendMode.Normal, BlendMode.Normal], file.GetLayers().Select(layer => layer.BlendMode));
        Assert.Equal("blend mode Screen", edit.Parts[0].NotBaked);
        Assert.Contains("Overlay", edit.Parts[2].Baked);
    }

    [Fact]
    public void Fill_opacity_becomes_alpha()
    {
        var file = File(Pixel("Veil").With(layer => layer.FillOpacity = 51));

        Bake(file);

        Assert.Equal(255, file.Find("Veil").FillOpacity);
        Assert.Equal(51, AlphaInTheMiddle(file, "Veil"));
    }

    [Fact]
    public void What_cannot_be_drawn_stays_as_it_is_with_the_mask_around_it()
    {
        var text = Other(LayerKind.Text, "Word");
        var file = File(Group("Head", text, Pixel("Face")).Masked(new Bounds(0, 0, 100, 60), 255));

        var edit = Bake(file);

        Assert.True(file.Find("Head").HasMask);
        Assert.Equal(LayerKind.Text, file.Find("Head/Word").Kind);
        Assert.Equal(RigOutcome.Kept, edit.Parts[1].Outcome);
        Assert.Contains("'Head/Word'", edit.Parts[0].NotBaked);
    }

    [Fact]
    public void A_clipped_layer_with_no_base_becomes_a_part()
    {
        var file = File(Clipped("Shadow"));

        var edit = Bake(file);

        Assert.Equal("Shadow", file.Sketch());
        Assert.Contains("clipping to nothing", edit.Parts[0].Baked);
    }

    [Fact]
    public void Missing_colours_are_listed_and_never_saved_as_black()
    {
        var file = File(Pixel("Face").With(layer => layer.Planes.RemoveAll(plane => plane.Role == PlaneRole.Color1)), Pixel("Body"));

        var edit = Bake(file);

        Assert.Equal(RigOutcome.Kept, edit.Parts[0].Outcome);
        Assert.Contains("colour channels are missing", edit.Parts[0].NotBaked);
        Assert.Null(file.Find("Face").FindPlane(PlaneRole.Color1));
    }

    [Fact]
    public void Masks_larger_than_the_canvas_and_layers_outside_of_it_are_baked()
    {
        var file = File(Pixel("Cape", new Bounds(-50, -20, -40, -10)).Masked(new Bounds(-500, -500, 500, 500), 255), Pixel("Dot", Bounds.Empty), Pixel("Face"));

        Bake(file);

        Assert.Equal(new Bounds(-51, -21, -39, -9), file.Find("Cape").Bounds);
        Assert.Equal("Cape Face", file.Sketch());
    }

    [Fact]
    public void Numbers_that_are_none_are_listed()
    {
        var bad = new byte[4 * 4];
        bad[0] = 0x7F;
        bad[1] = 0xC0;
        var layer = new Layer(LayerKind.Pixel, "Face", new StubLayerDetail()) { Bounds = new Bounds(0, 0, 2, 2) };
        layer.Planes.Add(Raw(PlaneRole.Color0, bad));
        var file = Picture.Create(ColorMode.Grayscale, 32, 4, 4, layer);

        var edit = new RigEdit();
        edit.Plan(file, []);

        Assert.Contains("no numbers", edit.Parts[0].NotBaked);
        Assert.Equal(RigOutcome.Kept, edit.Parts[0].Outcome);
    }

    [Fact]
    public void Grey_of_16_bits_becomes_light_of_8()
    {
        var layer = new Layer(LayerKind.Pixel, "Face", new StubLayerDetail()) { Bounds = new Bounds(0, 0, 1, 1) };
        layer.Planes.Add(Raw(PlaneRole.Color0, [0x80, 0x80]));
        var file = Picture.Create(ColorMode.Grayscale, 16, 2, 2, layer);

        Bake(file);

        Assert.Equal((ColorMode.Rgb, 8), (file.ColorMode, file.BitDepth));
        using var reader = new PixelReader(file);
        for (var role = PlaneRole.Color0; role <= PlaneRole.Color2; role++) Assert.Equal(0x80, reader.ReadPlane(file.Find("Face"), role)![4]);
    }

    [Fact]
    public void A_file_without_parts_is_refused()
    {
        Assert.Contains("no layers", Refused.Plan(File(), new RigEdit()).Message);
        Assert.Contains("every layer", Refused.Plan(File(Pixel("Sketch")), new RigEdit()).Message);
    }

    [Fact]
    public void Steps_tell_what_was_done_and_how_far_the_picture_differs()
    {
        var file = File(Clipped("Shadow"), Pixel("Arm"), Pixel("Sketch"));

        Bake(file);

        Assert.Equal(["Merged", "Part", "Layer", "Picture"], file.Changes.Select(change => change.Property));
        Assert.True(file.IsPictureStale);
    }

    private static RigEdit Bake(LayerFile file, RigEdit? edit = null)
    {
        edit ??= new RigEdit();
        edit.Plan(file, []).Apply();
        return edit;
    }

    private static byte AlphaInTheMiddle(LayerFile file, string path)
    {
        var layer = file.Find(path);
        using var reader = new PixelReader(file);
        return reader.ReadPlane(layer, PlaneRole.Alpha)![(layer.Bounds.Height / 2 * layer.Bounds.Width) + (layer.Bounds.Width / 2)];
    }
}
