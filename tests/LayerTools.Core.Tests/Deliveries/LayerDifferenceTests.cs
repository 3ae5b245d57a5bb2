using LayerTools.Deliveries;
using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Core.Tests.Deliveries;

public class LayerDifferenceTests
{
    [Fact]
    public void A_move_is_no_repaint()
    {
        var difference = Only(File(Arm()), File(Arm(right: 5, down: -3)));
        Assert.Equal((LayerChange.Moved, 5, -3), (difference.Change, difference.MovedRight, difference.MovedDown));
        Assert.Null(difference.RepaintedPercent);
    }

    [Fact]
    public void A_repaint_says_how_much_where_and_how_strongly()
    {
        // 2 x 3 of 20 x 40 px, from 0x80 to 0x90 in one channel.
        var difference = Only(File(Square(0x806040)), File(Square(0x806040, painting => painting.Rectangle(15, 20, 2, 3, rgb: 0x906040))));
        Assert.Equal((LayerChange.Repainted, new Bounds(15, 20, 17, 23), 16), (difference.Change, difference.ChangedBox!.Value, difference.LargestDifference!.Value));
        Assert.Equal(0.75, difference.RepaintedPercent);
    }

    [Fact]
    public void What_was_painted_on_at_an_edge_was_not_moved()
    {
        var difference = Only(File(Square(0x806040)), File(Square(0x806040, painting => painting.Rectangle(5, 20, 5, 4))));
        Assert.Equal((LayerChange.Repainted, new Bounds(5, 20, 10, 24)), (difference.Change, difference.ChangedBox!.Value));
    }

    [Fact]
    public void A_part_can_be_moved_and_painted_on()
    {
        var difference = Only(File(Arm()), File(Arm(right: 9, change: painting => painting.Rectangle(24, 30, 2, 2, rgb: 0xFF0000))));
        Assert.Equal((LayerChange.Moved | LayerChange.Repainted, 9, 0), (difference.Change, difference.MovedRight, difference.MovedDown));
        Assert.Equal(new Bounds(24, 30, 26, 32), difference.ChangedBox);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    public void A_larger_part_is_no_repaint(int scale)
    {
        var difference = Only(File(Arm()), File(Arm(scale: scale)));
        Assert.Equal((LayerChange.Resized, 100.0 * scale, 100.0 * scale), (difference.Change, difference.WidthPercent, difference.HeightPercent));
    }

    [Fact]
    public void Another_drawing_of_another_size_is_a_repaint()
    {
        var difference = Only(File(Arm()), File(Painting.Of("Arm").Rectangle(10, 10, 60, 20, rgb: 0x2040FF).Ellipse(50, 20, 20, 60, rgb: 0xFFFF00)));
        Assert.Equal(LayerChange.Repainted, difference.Change & LayerChange.Repainted);
        Assert.Equal(LayerChange.Same, difference.Change & LayerChange.Resized);
    }

    [Fact]
    public void A_mask_that_stays_under_a_part_that_grows_is_the_same() =>
        Assert.Equal(LayerChange.Repainted, Only(Masked(default), Masked(default, painting => painting.Rectangle(2, 20, 8, 4))).Change);

    [Fact]
    public void A_mask_that_moves_alone_is_told() => Assert.Equal(LayerChange.Masked, Only(Masked(default), Masked((1, 0))).Change);

    [Fact]
    public void A_mask_that_a_moved_part_left_behind_is_told() =>
        Assert.Equal(LayerChange.Masked | LayerChange.Moved, Only(Masked(default), Masked((-4, 0), shift: 4)).Change);

    [Fact]
    public void A_mask_that_moves_along_is_the_same() => Assert.Equal(LayerChange.Moved, Only(Masked(default), Masked(default, shift: 4)).Change);

    [Fact]
    public void Packing_alone_is_no_difference()
    {
        var (old, @new) = (File(Arm()), File(Arm()));
        using var spool = new SpoolFile();
        var layer = @new.GetLayers().Single();
        using (var reader = new LayerTools.Pixels.PixelReader(@new))
        {
            for (var i = 0; i < layer.Planes.Count; i++)
            {
                var role = layer.Planes[i].Role;
                layer.Planes[i] = LayerTools.Pixels.PlanePacker.Pack(role, LayerTools.Pixels.Compression.Zip, layer.Bounds.Width, layer.Bounds.Height, 8, FileFormat.Psd, reader.ReadPlane(layer, role)!, spool);
            }
        }

        Assert.Equal(LayerChange.Same, Only(old, @new).Change);
    }

    [Fact]
    public void Ids_given_anew_are_not_believed()
    {
        var (old, @new) = (Figure(), Figure());
        var ids = @new.GetLayers().Select(layer => layer.Id).Reverse().ToList();
        foreach (var (layer, id) in @new.GetLayers().Zip(ids)) layer.Id = id;
        Assert.All(Compare(old, @new), difference => Assert.Equal((LayerChange.Same, difference.OldLayerPath), (difference.Change, difference.LayerPath)));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Names_that_were_swapped_are_two_renames(bool withIds)
    {
        var (old, @new) = (Figure(), Figure());
        (@new.Find("Arm L").Name, @new.Find("Arm R").Name) = ("Arm R", "Arm L");
        if (!withIds) DropIds(old, @new);
        var differences = Compare(old, @new);
        Assert.Equal([("Arm L", "Arm R"), ("Arm R", "Arm L")], differences.Where(difference => difference.Change == LayerChange.Renamed).Select(difference => (difference.OldLayerPath!, difference.LayerPath)).Order());
        Assert.Equal(2, differences.Count(difference => difference.Change != LayerChange.Same));
    }

    [Fact]
    public void A_duplicated_layer_is_one_that_was_added()
    {
        var (old, @new) = (Figure(), Figure());
        var copy = Painting.Of("Arm L copy").Rectangle(5, 20, 8, 30, rgb: 0x40A060).ToLayer();
        copy.Id = 99;
        @new.Root.Insert(0, copy);
        @new.Renumber();
        Assert.Equal([(LayerChange.Added, "Arm L copy")], Compare(old, @new).Where(difference => difference.Change != LayerChange.Same).Select(difference => (difference.Change, difference.LayerPath)));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_renamed_group_keeps_its_layers(bool withIds)
    {
        var (old, @new) = (Figure(), Figure());
        @new.Find("Head").Name = "Skull";
        if (!withIds) DropIds(old, @new);
        Assert.Equal([(LayerChange.Renamed, "Skull", "It was called 'Head'.")], Compare(old, @new).Where(difference => difference.Change != LayerChange.Same).Select(difference => (difference.Change, difference.LayerPath, difference.Breaks)));
    }

    [Fact]
    public void Empty_files_have_no_differences()
    {
        var empty = ModelBuilder.File();
        Assert.Empty(Compare(empty, ModelBuilder.File()));
        Assert.All(Compare(empty, Figure()), difference => Assert.Equal(LayerChange.Added, difference.Change));
        Assert.All(Compare(Figure(), empty), difference => Assert.Equal((LayerChange.Removed, "It is gone."), (difference.Change, difference.Breaks)));
    }

    [Fact]
    public void Marks_do_not_count()
    {
        var (old, @new) = (Figure(), Figure());
        foreach (var layer in @new.GetLayers()) layer.Mark = Mark.Green;
        Assert.All(Compare(old, @new), difference => Assert.Equal(LayerChange.Same, difference.Change));
    }

    [Fact]
    public void What_breaks_a_rig_comes_first_and_what_is_the_same_last()
    {
        var (old, @new) = (Figure(), Figure());
        @new.Find("Head/Hair").OpacityByte = 9;
        @new.Find("Arm R").Name = "Arm";
        @new.Renumber();
        Assert.Equal(["Arm", "Head/Hair", "Head", "Head/Eye", "Arm L"], Compare(old, @new).Select(difference => difference.LayerPath));
    }

    [Fact]
    public void The_canvas_and_the_depth_are_warned_about()
    {
        var @new = new LayerFile("new.psd", FileFormat.Psd, 120, 60, ColorMode.Rgb, 16, new StubFileDetail());
        Assert.Equal(
            ["The canvas is 120 x 60 px and was 100 x 60 px.", "The file is Rgb with 16 bits and was Rgb with 8 bits; pixels are compared as a screen shows them."],
            DeliveryComparer.Compare(ModelBuilder.File(), @new, TestContext.Current.CancellationToken).Warnings);
    }

    [Fact]
    public void Parts_a_world_apart_are_compared()
    {
        var (old, @new) = (File(Arm()), File(Arm()));
        var layer = @new.GetLayers().Single();
        layer.Bounds = layer.Bounds.Shift(400_000_000, 0);
        layer.Planes[3] = ModelBuilder.Raw(PlaneRole.Color2, new byte[layer.Bounds.Width * layer.Bounds.Height]);
        Assert.Equal((LayerChange.Moved | LayerChange.Repainted, 400_000_000), (Only(old, @new).Change, Only(old, @new).MovedRight));
    }

    [Fact]
    public void Stops_when_it_is_told_to() =>
        Assert.ThrowsAny<OperationCanceledException>(() => DeliveryComparer.Compare(Figure(), Figure(), new CancellationToken(canceled: true)));

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Many_layers_that_are_alike_are_found_again(bool areAlike)
    {
        const int Count = 600;
        var (old, @new) = (Crowd(Count, areAlike), Crowd(Count, areAlike));
        foreach (var layer in @new.GetLayers()) layer.Name += " new";
        DropIds(old, @new);
        var differences = Compare(old, @new);
        Assert.Equal(Count, differences.Count);
        Assert.All(differences, difference => Assert.Equal((LayerChange.Renamed, difference.OldLayerPath + " new"), (difference.Change, difference.LayerPath)));
    }

    private static LayerFile Crowd(int count, bool areAlike) => ModelBuilder.File([.. Enumerable.Range(0, count).Select(i =>
    {
        var rgb = areAlike ? 0x808080 : (i * 7919) & 0xFFFFFF;
        return Painting.Of($"Scale {i}").Rectangle(10, 10, 4 + (areAlike ? 0 : i % 5), 4, rgb: rgb).Rectangle(10, 12, 2, 2, rgb: 0xFFFFFF ^ rgb).ToLayer();
    })]);

    private static LayerFile Figure() => ModelBuilder.File(
        ModelBuilder.Group("Head",
            Painting.Of("Hair").Ellipse(30, 0, 40, 20, rgb: 0x202020).ToLayer(),
            Painting.Of("Eye").Ellipse(40, 10, 6, 6, rgb: 0x2060C0).ToLayer()),
        Painting.Of("Arm L").Rectangle(5, 20, 8, 30, rgb: 0x40A060).ToLayer(),
        Painting.Of("Arm R").Rectangle(80, 20, 8, 30, rgb: 0x40A060).Ellipse(78, 45, 14, 12, rgb: 0xE0B090).ToLayer());

    private static Painting Arm(int right = 0, int down = 0, int scale = 1, Func<Painting, Painting>? change = null) => (change ?? (painting => painting))(
        Painting.Of("Arm").Rectangle(10 + right, 10 + down, 16 * scale, 60 * scale, rgb: 0xA06840).Ellipse(10 + right, 10 + down + (50 * scale), 40 * scale, 20 * scale, rgb: 0x402818));

    private static Painting Square(int rgb, Func<Painting, Painting>? change = null) => (change ?? (painting => painting))(Painting.Of("Chest").Rectangle(10, 10, 20, 40, rgb: rgb));

    private static LayerFile Masked((int Right, int Down) alone, Func<Painting, Painting>? change = null, int shift = 0)
    {
        var file = File(Square(0x806040, change));
        var layer = file.GetLayers().Single();
        layer.Bounds = layer.Bounds.Shift(shift, 0);
        layer.Mask = new LayerMask { Bounds = new Bounds(12, 12, 14, 14).Shift(shift + alone.Right, alone.Down), DefaultColor = 255 };
        layer.Planes.Add(ModelBuilder.Raw(PlaneRole.UserMask, [1, 2, 3, 4]));
        return file;
    }

    private static LayerFile File(Painting painting) => ModelBuilder.File(painting.ToLayer());

    private static void DropIds(params LayerFile[] files)
    {
        foreach (var layer in files.SelectMany(file => file.GetLayers())) layer.Id = null;
    }

    private static LayerDifference Only(LayerFile old, LayerFile @new) => Assert.Single(Compare(old, @new));

    private static IReadOnlyList<LayerDifference> Compare(LayerFile old, LayerFile @new) => DeliveryComparer.Compare(old, @new, TestContext.Current.CancellationToken).Differences;
}
