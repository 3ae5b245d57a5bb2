using LayerTools.Errors;
using LayerTools.Measures;
using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Measures;

public class StatusReaderTests
{
    private static LayerStatus Read(LayerFile file, string path, StatusOptions? options = null) => new StatusReader(options).Read(file).Single(status => status.LayerPath == path);

    [Fact]
    public void Painted_pixels_are_those_that_are_not_fully_transparent()
    {
        var file = File(Pixel("Eye L", new Bounds(0, 0, 3, 2), [0, 1, 255, 0, 0, 7]), Pixel("Blank", new Bounds(0, 0, 2, 1), [0, 0]), Pixel("Zero", Bounds.Empty));

        Assert.Equal([3, 0, 0], new StatusReader().Read(file).Select(status => status.PaintedArea));
        Assert.Equal([true, false, false], new StatusReader().Read(file).Select(status => status.IsPart));
    }

    [Theory]
    [InlineData(16, new byte[] { 0, 0, 0, 1, 128, 0 }, 2)]
    [InlineData(32, new byte[] { 0, 0, 0, 0, 63, 128, 0, 0, 0, 0, 0, 1 }, 2)]
    [InlineData(1, new byte[] { 0b1011_1111 }, 2)]
    public void Every_depth_is_counted(int depth, byte[] alpha, long expected)
    {
        var file = new LayerFile("deep.psd", FileFormat.Psd, 100, 60, ColorMode.Rgb, depth, new StubFileDetail());
        var layer = new Layer(LayerKind.Pixel, "A", new StubLayerDetail()) { Bounds = new Bounds(0, 0, 3, 1) };
        layer.Planes.Add(Raw(PlaneRole.Alpha, alpha));
        file.Root.Append(layer);
        file.Renumber();

        Assert.Equal(expected, Read(file, "A").PaintedArea);
    }

    [Fact]
    public void A_layer_without_alpha_is_painted_all_over()
    {
        var layer = Pixel("A", new Bounds(0, 0, 4, 5));
        layer.Planes.RemoveAll(plane => plane.Role == PlaneRole.Alpha);

        Assert.Equal(20, Read(File(layer), "A").PaintedArea);
    }

    [Theory]
    [InlineData("Hair", LayerRole.Part)]
    [InlineData("Background", LayerRole.Backdrop)]
    [InlineData("BG_02", LayerRole.Backdrop)]
    [InlineData("background colour", LayerRole.Backdrop)]
    [InlineData("背景色", LayerRole.Backdrop)]
    [InlineData("用紙", LayerRole.Backdrop)]
    [InlineData("Pose sketch 3", LayerRole.Sketch)]
    [InlineData("ROUGH", LayerRole.Sketch)]
    [InlineData("下描き 2", LayerRole.Sketch)]
    [InlineData("ラフのコピー", LayerRole.Sketch)]
    [InlineData("Face guide", LayerRole.Guide)]
    [InlineData("参考", LayerRole.Guide)]
    [InlineData("Rough fur", LayerRole.Part)]
    [InlineData("グラフ", LayerRole.Part)]
    [InlineData("Guidebook", LayerRole.Part)]
    [InlineData("Thorough", LayerRole.Part)]
    [InlineData("背景の前の手", LayerRole.Part)]
    public void Roles_follow_from_names(string name, LayerRole role)
    {
        var status = Read(File(Pixel(name)), name);

        Assert.Equal((role, role == LayerRole.Part), (status.Role, status.IsPart));
    }

    [Fact]
    public void A_layer_takes_its_role_from_the_nearest_group_whose_name_tells()
    {
        var file = File(Group("Sketches", Pixel("Arm"), Group("Guides", Pixel("Leg"))), Pixel("Arm"));

        Assert.Equal([LayerRole.Sketch, LayerRole.Guide, LayerRole.Part], new StatusReader().Read(file).Select(status => status.Role));
    }

    [Theory]
    [InlineData(LayerKind.Adjustment)]
    [InlineData(LayerKind.Fill)]
    public void Layers_without_pixels_of_their_own_are_no_parts(LayerKind kind)
    {
        var file = File(Pixel("A", mark: Mark.Red), Other(kind, "B"));
        file.Find("B").Bounds = new Bounds(0, 0, 9, 9);
        file.Find("B").Planes.Add(Raw(PlaneRole.Color0, new byte[81]));

        var status = Read(file, "B");

        Assert.Equal((false, null, 0), (status.IsPart, status.Done, status.PaintedArea));
    }

    [Fact]
    public void Green_means_done_and_a_group_speaks_for_layers_without_a_mark_of_their_own()
    {
        var arm = Group("Arm", Pixel("Hand"), Pixel("Sleeve", mark: Mark.Red), Group("Ring", Pixel("Stone")));
        arm.Mark = Mark.Green;
        var file = File(arm, Pixel("Nose", mark: Mark.Green), Pixel("Mouth"));

        Assert.Equal([("Hand", true, Mark.Green), ("Sleeve", false, Mark.Red), ("Stone", true, Mark.Green), ("Nose", true, Mark.Green), ("Mouth", false, Mark.None)],
            new StatusReader().Read(file).Select(status => (status.Name, status.Done!.Value, status.Mark)));
    }

    [Fact]
    public void Other_marks_and_names_can_mean_done()
    {
        var file = File(Pixel("A", mark: Mark.Blue), Pixel("B [OK]"), Pixel("C", mark: Mark.Green));
        var options = new StatusOptions { DoneMarks = new HashSet<Mark> { Mark.Blue }, DoneName = StatusOptions.CreatePattern(@"\[ok\]") };

        Assert.Equal([true, true, false], new StatusReader(options).Read(file).Select(status => status.Done));
    }

    [Fact]
    public void Without_any_mark_nothing_is_known_unless_names_tell()
    {
        var file = File(Pixel("A"), Pixel("B done"));

        Assert.All(new StatusReader().Read(file), status => Assert.Null(status.Done));
        Assert.Equal([false, true], new StatusReader(new StatusOptions { DoneName = StatusOptions.CreatePattern("done$") }).Read(file).Select(status => status.Done));
    }

    [Fact]
    public void The_side_is_said_by_the_name_or_by_the_group_and_missing_opposites_are_told()
    {
        var file = File(Group("Arm L", Pixel("Hand"), Pixel("Sleeve")), Group("Arm R", Pixel("Hand")), Pixel("Eye R"), Pixel("Nose"), Pixel("Sketch L"));

        var found = new StatusReader().Read(file).ToDictionary(status => status.LayerPath, status => (status.Side, status.HasOpposite, status.MissingOpposite));

        Assert.Equal((Side.Left, true, false), found["Arm L/Hand"]);
        Assert.Equal((Side.Left, false, true), found["Arm L/Sleeve"]);
        Assert.Equal((Side.Right, true, false), found["Arm R/Hand"]);
        Assert.Equal((Side.Right, false, true), found["Eye R"]);
        Assert.Equal((Side.None, null, false), found["Nose"]);
        Assert.Equal((Side.Left, null, false), found["Sketch L"]);
    }

    [Fact]
    public void A_chosen_group_stands_for_its_layers_and_the_rest_of_the_file_still_counts()
    {
        var file = File(Group("Arm L", Pixel("Hand L")), Pixel("Hand R"), Pixel("Nose", mark: Mark.Green));

        var status = Assert.Single(new StatusReader().Read(file, [file.Find("Arm L"), file.Find("Arm L/Hand L")]));

        Assert.Equal(("Arm L/Hand L", "Arm L", false, true), (status.LayerPath, status.Group, status.Done, status.FileHasMarks));
    }

    [Fact]
    public void A_pattern_that_takes_too_long_is_an_error()
    {
        var file = File(Pixel(new string('a', 60) + "!"));

        var error = Assert.Throws<LayeredFileException>(() => new StatusReader(new StatusOptions { DoneName = StatusOptions.CreatePattern("(a+)+$") }).Read(file));

        Assert.Equal(LayeredFileErrorKind.LimitExceeded, error.Kind);
    }

    [Fact]
    public void A_broken_pattern_is_explained() => Assert.Contains("'('", Assert.Throws<LayeredFileException>(() => StatusOptions.CreatePattern("(")).Problem);
}
