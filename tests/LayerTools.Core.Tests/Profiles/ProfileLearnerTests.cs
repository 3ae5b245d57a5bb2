using LayerTools.Checks;
using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Profiles;
using LayerTools.Profiles.Learning;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Profiles;

/// <summary>Invented figures, 200 × 300 px unless a test says otherwise.</summary>
public sealed class ProfileLearnerTests
{
    private static readonly Bounds Middle = new(90, 10, 110, 30);
    private static readonly Bounds ViewersLeft = new(20, 100, 60, 180);
    private static readonly Bounds ViewersRight = new(140, 100, 180, 180);

    [Fact]
    public void A_figure_in_another_style_shows_it()
    {
        var learned = Learn(File(
            ("hair_front_01", Middle), ("hair_front_02", Middle), ("hair_front_03", Middle), ("left_iris", ViewersLeft), ("right_iris", ViewersRight),
            ("nose", Middle), ("left_upper_arm", ViewersLeft), ("right_upper_arm", ViewersRight), ("hair_back", Middle)));
        var naming = learned.Profile.Naming;
        Assert.Equal(("_", NameCase.Lower, NameLanguage.English, 2, 1), (naming.Separator, naming.Case, naming.Language, naming.NumberDigits, naming.FirstNumber));
        Assert.Equal(("left", "right", SidePlace.Start, SideOwner.Viewer), (naming.Sides.Left, naming.Sides.Right, naming.Sides.Place, naming.Sides.Owner));
        Assert.Equal(new CanvasProfile { Width = 200, Height = 300 }, learned.Profile.Canvas);
        Assert.Equal("learned", learned.Profile.Name);
        Assert.Equal("Learned from figure.psd.", learned.Profile.Description);
    }

    [Theory]
    [InlineData(NameCase.Sentence, " ", "Upper arm L")]
    [InlineData(NameCase.Title, "-", "Upper-Arm-L")]
    [InlineData(NameCase.Lower, ".", "upper.arm.L")]
    [InlineData(NameCase.Upper, " ", "UPPER ARM L")]
    [InlineData(NameCase.Pascal, "_", "UpperArm_L")]
    [InlineData(NameCase.Camel, "", "upperArmL")]
    public void Case_and_separator_are_told_from_names(NameCase nameCase, string separator, string name)
    {
        var naming = Learn(File((name, ViewersRight), (SideName.Swap(name), ViewersLeft))).Profile.Naming;
        Assert.Equal((nameCase, separator), (naming.Case, naming.Separator));
        Assert.Equal(("L", "R", SidePlace.End, SideOwner.Character), (naming.Sides.Left, naming.Sides.Right, naming.Sides.Place, naming.Sides.Owner));
    }

    [Fact]
    public void Japanese_names_are_known_as_such()
    {
        var naming = Learn(File(("前髪", Middle), ("左腕", ViewersLeft), ("右腕", ViewersRight))).Profile.Naming;
        Assert.Equal((NameLanguage.Japanese, "", "左", SidePlace.Start, SideOwner.Viewer), (naming.Language, naming.Separator, naming.Sides.Left, naming.Sides.Place, naming.Sides.Owner));
    }

    [Fact]
    public void Zones_are_put_in_the_order_of_the_files_and_others_stay_behind_their_neighbour()
    {
        var learned = Learn(File(("Arm L", Middle), ("Leg L", Middle), ("Hair front", Middle), ("Neck", Middle)));
        var stack = learned.Profile.Stack;
        var basis = LayerProfiles.Default.Stack;
        string[] seen = ["arm", "leg", "hair-front", "neck"];
        Assert.Equal(seen, stack.Where(seen.Contains));
        Assert.Equal(basis.Order(StringComparer.Ordinal), stack.Order(StringComparer.Ordinal));
        foreach (var zone in basis.Skip(1).Except(seen)) Assert.Equal(basis[IndexOf(basis, zone) - 1], stack[IndexOf(stack, zone) - 1]);
        Assert.Contains(learned.NotLearned, sentence => sentence.StartsWith("Stack: no part is in ", StringComparison.Ordinal));
    }

    [Fact]
    public void Zones_that_alternate_are_told()
    {
        var learned = Learn(File(("Arm", Middle), ("Leg", Middle), ("Arm 2", Middle), ("Leg 2", Middle)));
        Assert.Contains("Stack: these zones lie among each other, so that their order is not clear: arm with leg.", learned.NotLearned);
    }

    [Fact]
    public void A_left_part_and_a_right_one_are_not_compared()
    {
        var learned = Learn(File(("Leg L", Middle), ("Arm L", Middle), ("Leg R", Middle), ("Arm R", Middle)));
        Assert.DoesNotContain(learned.NotLearned, sentence => sentence.Contains("among each other", StringComparison.Ordinal));
        Assert.True(IndexOf(learned.Profile.Stack, "leg") < IndexOf(learned.Profile.Stack, "arm"));
    }

    [Fact]
    public void Two_files_that_agree_count_and_what_they_differ_in_is_left_open()
    {
        var learned = Learn(ModelBuilder.File("a.psd", 200, 300, ModelBuilder.Pixel("Head")), ModelBuilder.File("b.psd", 201, 300, ModelBuilder.Pixel("Head")));
        Assert.Equal(new CanvasProfile { Width = null, Height = 300, EvenWidth = false }, learned.Profile.Canvas);
        Assert.Contains(learned.NotLearned, sentence => sentence.StartsWith("Canvas: the width", StringComparison.Ordinal));
        Assert.Equal("Learned from a.psd, b.psd.", learned.Profile.Description);
    }

    [Fact]
    public void The_mark_of_most_parts_means_finished()
    {
        var learned = Learn(ModelBuilder.File("a.psd", 200, 300, [.. Enumerable.Range(0, 5).Select(i => ModelBuilder.Pixel($"Hair front {i}", mark: i == 0 ? Mark.Violet : i == 1 ? Mark.Yellow : Mark.Blue))]));
        Assert.Equal(MarkMeaning.Done, learned.Profile.Marks[Mark.Blue]);
        Assert.DoesNotContain(Mark.Green, learned.Profile.Marks.Keys);
        Assert.DoesNotContain(Mark.Violet, learned.Profile.Marks.Keys);
        Assert.Equal(LayerProfiles.Default.Marks[Mark.Yellow], learned.Profile.Marks[Mark.Yellow]);
        Assert.Contains(learned.NotLearned, sentence => sentence.StartsWith("Marks: violet is on 1 of 5 parts, and what it means is not known", StringComparison.Ordinal));
        Assert.Equal((0, 1), (learned.Profile.Naming.FirstNumber, learned.Profile.Naming.NumberDigits));
    }

    [Theory]
    [InlineData(1016, 1024)]
    [InlineData(1017, 2048)]
    [InlineData(5000, 8192)]
    [InlineData(16377, 4096)]
    public void The_page_takes_the_largest_part_with_its_padding(int side, int page)
    {
        var part = new Layer(LayerKind.Text, "Head", new StubLayerDetail()) { Bounds = new Bounds(0, 0, side, 10) };
        Assert.Equal(page, Learn(ModelBuilder.File("a.psb", 20_000, 300, part)).Profile.Textures.PageSize);
    }

    [Fact]
    public void What_is_no_part_shows_nothing()
    {
        var learned = Learn(File(("left_arm_sketch", ViewersLeft), ("Background", Middle)));
        Assert.Equal(LayerProfiles.Default.Naming, learned.Profile.Naming);
        Assert.Equal(LayerProfiles.Default.Stack, learned.Profile.Stack);
        Assert.Contains(learned.NotLearned, sentence => sentence.StartsWith("Sides:", StringComparison.Ordinal));
        Assert.Contains(learned.NotLearned, sentence => sentence.StartsWith("Textures:", StringComparison.Ordinal));
    }

    /// <summary>What was learned of whatever names can be written and read back.</summary>
    [Theory]
    [InlineData("figure")]
    [InlineData("figure-ja")]
    public void What_was_learned_can_be_used(string basis)
    {
        using var folder = new TemporaryFolder();
        string[] names = ["", "L", "☆", "Ärmel L", "upperArm", "左手 L", "a/b", "arm_01", "R&D", "\u0001", new string('x', 300), "🐟", "Arm　L", "x", "1"];
        foreach (var name in names)
        {
            var learner = new ProfileLearner(LayerProfiles.FindShipped(basis)!);
            learner.Add(File((name, Middle), ("Arm L", ViewersLeft)));
            learner.Add(File((name, Middle)));
            var path = folder["x.layerprofile.json"];
            LayerProfiles.Write(learner.Learn("x").Profile, path, overwrite: true);
            Assert.DoesNotContain(LayerProfiles.Check(path), finding => finding.Severity == Severity.Error);
        }
    }

    private static LayerFile File(params (string Name, Bounds Bounds)[] layers) =>
        ModelBuilder.File("figure.psd", 200, 300, [.. layers.Select(layer => ModelBuilder.Pixel(layer.Name, layer.Bounds))]);

    private static LearnedProfile Learn(params LayerFile[] files)
    {
        var learner = new ProfileLearner(LayerProfiles.Default);
        foreach (var file in files) learner.Add(file);
        return learner.Learn("learned");
    }

    private static int IndexOf(IReadOnlyList<string> list, string item) => list.ToList().IndexOf(item);
}
