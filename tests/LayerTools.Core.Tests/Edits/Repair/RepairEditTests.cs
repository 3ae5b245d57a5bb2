using CsCheck;
using LayerTools.Checks;
using LayerTools.Edits.Repair;
using LayerTools.Formats;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Profiles;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Edits.Repair;

public class RepairEditTests
{
    private static readonly LayerProfile Profile = new() { Name = "test" };

    private static readonly string[] Names = ["arm L", "Arm_L", "arm L copy", "Arm L 2", "upper arm", "face", "Face ", "Layer 12", "Qwfp", "hair_front_01", "腕 左", "HAIR FRONT 1"];

    [Fact]
    public void A_guide_close_to_the_centre_line_is_put_onto_it()
    {
        var file = ModelBuilder.File("hero.psd", 1001, 60);
        file.Guides = [new Guide(20, false), new Guide(503, true), new Guide(900, true)];

        Repair(file);

        Assert.Equal([new Guide(20, false), new Guide(500.5, true), new Guide(900, true)], file.Guides);
        var change = Assert.Single(file.Changes);
        Assert.Equal(("Guide", "x = 503", "x = 500.5"), (change.Property, change.Old, change.New));
        Assert.False(file.IsPictureStale);
    }

    [Fact]
    public void A_centre_guide_is_drawn_where_there_is_none()
    {
        using var folder = new TemporaryFolder();
        var file = PaintedFile.Save(folder, "hero.psd", 40, 30, Painting.Of("Head").Rectangle(10, 5, 20, 20));
        file.Guides = [];

        Repair(file);
        LayerFiles.Save(file, folder["out.psd"], new SaveOptions());

        Assert.Equal([new Guide(20, true)], LayerFiles.Read(folder["out.psd"]).Guides);
    }

    [Theory]
    [InlineData("hero.psd")]
    [InlineData("hero.psb")]
    public void Clear_margins_are_cut_off_and_what_is_painted_stays_as_it_is(string name)
    {
        using var folder = new TemporaryFolder();
        var file = PaintedFile.Save(folder, name, 60, 50, Painting.Of("Arm L").Within(new Bounds(-5, 2, 40, 44)).Ellipse(10, 12, 13, 17, alpha: 30, rgb: 0x123456).Rectangle(12, 15, 4, 4, rgb: 0xFEDCBA));
        var before = Read(file, "Arm L");

        Repair(file);
        LayerFiles.Save(file, folder["out" + Path.GetExtension(name)], new SaveOptions());
        var saved = LayerFiles.Read(folder["out" + Path.GetExtension(name)]);

        Assert.Equal(new Bounds(10, 12, 23, 29), saved.Find("Arm L").Bounds);
        var after = Read(saved, "Arm L");
        for (var y = 0; y < 50; y++)
        {
            for (var x = 0; x < 60; x++) Assert.Equal(Pixel(before, x, y), Pixel(after, x, y));
        }
    }

    [Fact]
    public void Nearly_invisible_pixels_that_widen_a_part_are_cut_off_and_others_stay()
    {
        var file = ModelBuilder.File(Painting.Of("Arm L").Rectangle(0, 0, 60, 50, alpha: 7).Rectangle(20, 10, 20, 20, alpha: 8, rgb: 0x123456).Rectangle(25, 15, 5, 5, alpha: 3).ToLayer());

        new RepairEdit { Profile = Profile, Rules = [CheckRules.Find("FaintPixelsWidenBounds")!] }.Plan(file, []).Apply();

        Assert.Equal(new Bounds(20, 10, 40, 30), file.Find("Arm L").Bounds);
        Assert.True(file.IsPictureStale);
        var part = Read(file, "Arm L");
        Assert.Equal(0x08563412u, Pixel(part, 20, 10));
        Assert.Equal(3, part.Raster.Row(5)[(5 * 4) + 3]);
        Assert.Equal(("Bounds", "60 x 50 at 0, 0", "20 x 20 at 20, 10"), (file.Changes[0].Property, file.Changes[0].Old, file.Changes[0].New));
    }

    [Theory]
    [InlineData(8)]
    [InlineData(16)]
    [InlineData(32)]
    public void Faint_means_the_same_at_every_depth(int depth)
    {
        var layer = new Layer(LayerKind.Pixel, "Arm L", new StubLayerDetail()) { Bounds = new Bounds(5, 5, 25, 6) };
        byte[] Alpha(double value) => depth switch
        {
            8 => [(byte)Math.Round(value)],
            16 => [.. BitConverter.GetBytes((ushort)Math.Round(value * 257)).Reverse()],
            _ => [.. BitConverter.GetBytes((float)(value / 255)).Reverse()],
        };
        for (var role = PlaneRole.Alpha; role <= PlaneRole.Color2; role++) layer.Planes.Add(ModelBuilder.Raw(role, [.. Alpha(7), .. Alpha(200), .. Enumerable.Range(0, 18).SelectMany(_ => Alpha(6))]));
        var file = ModelBuilder.File(layer);
        file.BitDepth = depth;

        new RepairEdit { Profile = Profile, Rules = [CheckRules.Find("FaintPixelsWidenBounds")!] }.Plan(file, []).Apply();

        Assert.Equal(new Bounds(6, 5, 7, 6), layer.Bounds);
        using var reader = new PixelReader(file);
        Assert.Equal(Alpha(200), reader.ReadPlane(layer, PlaneRole.Color1));
    }

    [Fact]
    public void Nothing_is_lost_that_a_mask_only_hides()
    {
        var layer = Painting.Of("Arm L").Rectangle(0, 0, 60, 50, alpha: 5).Rectangle(20, 10, 20, 20).ToLayer();
        layer.Mask = new LayerMask { Bounds = new Bounds(0, 0, 1, 1), DefaultColor = 255 };
        layer.Planes.Add(ModelBuilder.Raw(PlaneRole.UserMask, [255]));

        var plan = new RepairEdit { Profile = Profile }.Plan(ModelBuilder.File(layer), []);

        Assert.DoesNotContain(plan.Steps, step => step.Layer == layer);
        Assert.Equal("'Arm L' is left as it is, since it has a mask, which may hide what would be lost.", Assert.Single(plan.Warnings));
    }

    [Fact]
    public void Names_are_trimmed_unless_two_layers_of_a_group_would_share_one()
    {
        var file = ModelBuilder.File(
            ModelBuilder.Group(" Arms", ModelBuilder.Pixel("Hand L "), ModelBuilder.Pixel("hand L"), ModelBuilder.Pixel("\u3000腕")),
            ModelBuilder.Pixel("Hand L\t"),
            ModelBuilder.Pixel("\u200BHand L"));

        var plan = new RepairEdit { Profile = Profile, Rules = [CheckRules.Find("UntrimmedName")!] }.Plan(file, []);
        plan.Apply();

        Assert.Equal(["Arms", "Hand L ", "hand L", "腕", "Hand L", "\u200BHand L"], file.GetLayers().Select(layer => layer.Name));
        Assert.Equal(2, plan.Warnings.Count);
        Assert.Equal(["Name", "Name", "Name"], file.Changes.Select(change => change.Property));
        Assert.Equal("' Arms/Hand L ' keeps its name, since another layer of its group is called 'Hand L'.", plan.Warnings[0]);
    }

    [Fact]
    public void Names_are_written_as_the_profile_says_where_they_are_understood_for_sure()
    {
        var file = ModelBuilder.File(
            ModelBuilder.Group("HEAD", ModelBuilder.Pixel("eye_L copy 3"), ModelBuilder.Pixel("Qwfp 7"), ModelBuilder.Pixel("Eye L "), ModelBuilder.Pixel("mouth")),
            ModelBuilder.Pixel("sketch"));
        var edit = new RepairEdit { Profile = LayerProfiles.Default, Rules = [CheckRules.Find("NameOffProfile")!, CheckRules.Find("UntrimmedName")!] };

        edit.Plan(file, []).Apply();
        var names = file.GetLayers().Select(layer => layer.Name).ToList();
        var changes = file.Changes.Count;
        edit.Plan(file, []).Apply();

        Assert.Equal(names.Count, names.Distinct().Count());
        Assert.Equal(["Head", "Qwfp 7", "Mouth", "sketch"], [names[0], names[2], names[4], names[5]]);
        Assert.All([names[1], names[3]], name => Assert.Matches("^Eye( [0-9])? L( [0-9])?$", name));
        Assert.Equal(changes, file.Changes.Count);
    }

    [Fact]
    public void Writing_names_twice_is_writing_them_once() =>
        Gen.Int[0, Names.Length - 1].Select(index => Names[index]).Array[1, 6].Sample(
            names =>
            {
                var file = ModelBuilder.File([.. names.Select(name => ModelBuilder.Pixel(name))]);
                var edit = new RepairEdit { Profile = LayerProfiles.Default, Rules = [CheckRules.Find("NameOffProfile")!, CheckRules.Find("UntrimmedName")!] };
                edit.Plan(file, []).Apply();

                Assert.Empty(edit.Plan(file, []).Steps);
                Assert.Empty(LayerFileChecker.Check(file, LayerProfiles.Default, [CheckRules.Find("NameOffProfile")!], TestContext.Current.CancellationToken));
            },
            iter: 300,
            threads: 1);

    [Fact]
    public void A_layer_whose_edge_has_effects_is_left_alone()
    {
        var file = ModelBuilder.File(Painting.Of("Glow").Within(new Bounds(0, 0, 90, 50)).Rectangle(10, 10, 10, 10).ToLayer());
        ((StubLayerDetail)file.Find("Glow").Detail).Uses = LayerFeatures.Effects;

        var plan = new RepairEdit { Profile = Profile, Rules = [CheckRules.Find("EmptyMargin")!] }.Plan(file, []);

        Assert.Empty(plan.Steps);
        Assert.Equal("'Glow' is left as it is, since it has effects, which go by its edge.", Assert.Single(plan.Warnings));
    }

    [Fact]
    public void A_rule_that_the_profile_switches_off_repairs_nothing()
    {
        var file = ModelBuilder.File();
        var off = Profile with { Rules = RepairEdit.Repairable.ToDictionary(rule => rule.Id, _ => new RuleSetting(Severity.None, null)) };

        Assert.Empty(new RepairEdit { Profile = off }.Plan(file, []).Steps);
    }

    [Fact]
    public void Repairing_twice_is_repairing_once_and_the_rules_find_nothing_afterwards() =>
        (from shapes in Gen.Select(Gen.Int[0, 30], Gen.Int[0, 20], Gen.Int[1, 25], Gen.Int[1, 25], Gen.Byte).Array[0, 4].Array[1, 3]
         from guide in Gen.Double[-10, 110]
         select (shapes, guide)).Sample(
            drawing =>
            {
                var file = ModelBuilder.File([.. drawing.shapes.Select((shapes, index) =>
                {
                    var part = Painting.Of($"Part {index}{(index == 1 ? " " : "")}").Within(new Bounds(0, 0, 60, 50));
                    foreach (var (left, top, width, height, alpha) in shapes) part.Rectangle(left, top, width, height, alpha);
                    return part.ToLayer();
                })]);
                file.Guides = [new Guide(Math.Round(drawing.guide * 32) / 32, true)];
                Repair(file);
                var changes = file.Changes.Count;

                Assert.Empty(LayerFileChecker.Check(file, Profile, RepairEdit.Repairable, TestContext.Current.CancellationToken));
                Repair(file);
                Assert.Equal(changes, file.Changes.Count);
            },
            iter: 200,
            threads: 1);

    private static void Repair(LayerFile file) => new RepairEdit { Profile = Profile }.Plan(file, []).Apply();

    private static (Bounds Bounds, Raster Raster) Read(LayerFile file, string path)
    {
        using var reader = new PixelReader(file);
        return (file.Find(path).Bounds, reader.ReadRaster(file.Find(path)));
    }

    /// <summary>The colour of a pixel with its alpha; 0 for a clear one.</summary>
    private static uint Pixel((Bounds Bounds, Raster Raster) layer, int x, int y)
    {
        if (new Bounds(x, y, x + 1, y + 1).Intersect(layer.Bounds).IsEmpty) return 0;
        var pixel = layer.Raster.Row(y - layer.Bounds.Top).Slice(4 * (x - layer.Bounds.Left), 4);
        return pixel[3] == 0 ? 0 : BitConverter.ToUInt32(pixel);
    }
}
