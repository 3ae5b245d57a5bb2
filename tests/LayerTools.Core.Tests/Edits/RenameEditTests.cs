using System.Diagnostics;
using System.Globalization;
using LayerTools.Edits;
using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Edits;

public class RenameEditTests
{
    private static EditPlan Apply(LayerFile file, LayerEdit edit)
    {
        var plan = edit.Plan(file, [.. file.GetLayers().Reverse()]);
        plan.Apply();
        return plan;
    }

    [Fact]
    public void Only_names_that_match_change_and_each_change_is_recorded()
    {
        var file = File(Pixel("LAYER 1"), Group("Arm L", Pixel("layer 2"), Pixel("Hand L")));

        var plan = Apply(file, RenameEdit.ByPattern("^layer (\\d+)$", "Part $1"));

        Assert.Equal("Part_1 Arm_L(Part_2 Hand_L)", file.Sketch());
        Assert.Equal(["LAYER 1: Name 'LAYER 1' -> 'Part 1'", "Arm L/layer 2: Name 'layer 2' -> 'Part 2'"], file.Changes.Select(change => change.ToString()));
        Assert.Equal([(1, 1), (3, 3)], file.Changes.Select(change => (change.LayerNumber, change.Id!.Value)));
        Assert.Equal(2, file.PendingCount);
        Assert.False(plan.ChangesPicture);
    }

    [Fact]
    public void Case_counts_if_asked()
    {
        var file = File(Pixel("LAYER 1"), Pixel("layer 2"));

        Apply(file, RenameEdit.ByPattern("layer", "Part", caseSensitive: true));

        Assert.Equal("LAYER_1 Part_2", file.Sketch());
    }

    [Fact]
    public void A_plan_alone_changes_nothing()
    {
        var file = File(Pixel("A"));

        var plan = RenameEdit.ByPattern("A", "B").Plan(file, file.GetChildren());

        Assert.Equal(("A", "A", "B"), (plan.Steps[0].LayerPath, plan.Steps[0].Old, plan.Steps[0].New));
        Assert.Equal("A", file.Sketch());
        Assert.Empty(file.Changes);
    }

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("ja-JP")]
    public void No_culture_counts(string culture)
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
        try
        {
            var file = File(Pixel("IRIS"), Pixel("a"));
            Apply(file, RenameEdit.ByPattern("iris", "PUPIL I"));
            Assert.Equal("PUPIL_I a", file.Sketch());
            Assert.Throws<LayeredFileException>(() => RenameEdit.ByPattern("^a$", "pupil i").Plan(file, [.. file.GetLayers()]));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData("(a+)+$")]
    [InlineData("(\\w+\\s?)*:")]
    public void A_catastrophic_pattern_is_an_error_and_no_hang(string pattern)
    {
        var layers = Enumerable.Range(0, 30).Select(_ => Pixel(new string('a', 60) + "!")).ToArray();
        var file = File(layers);
        var watch = Stopwatch.StartNew();

        var error = Refused.Plan(file, RenameEdit.ByPattern(pattern, "x"), layers);

        Assert.InRange(watch.Elapsed.TotalSeconds, 1, 8);
        Assert.Contains("2 seconds", error.Problem);
    }

    [Fact]
    public void A_broken_pattern_is_explained()
    {
        var error = Assert.Throws<LayeredFileException>(() => RenameEdit.ByPattern("Layer (", "x"));

        Assert.Equal(LayeredFileErrorKind.EditRefused, error.Kind);
        Assert.Contains("Layer (", error.Message);
    }

    [Fact]
    public void A_function_gets_running_numbers_front_to_back_and_may_leave_layers_alone()
    {
        var file = File(Pixel("a"), Group("Group", Pixel("b")), Pixel("c"));

        Apply(file, RenameEdit.ByFunction((layer, n) => layer.Kind == LayerKind.Group ? null : $"{layer.Name}{n}"));

        Assert.Equal("a1 Group(b2) c3", file.Sketch());
    }

    [Theory]
    [InlineData("Hair {n} L", 1, 2, "Hair_01_L Hair_02_L")]
    [InlineData("Hair", 9, 2, "Hair_09 Hair_10")]
    [InlineData("Hair_", 0, 1, "Hair_0 Hair_1")]
    [InlineData("髪", 1, 3, "髪_001 髪_002")]
    public void Numbers_count_up_front_to_back(string name, int start, int width, string expected)
    {
        var file = File(Pixel("x"), Pixel("y"));

        Apply(file, RenameEdit.ByFunction((_, _) => name, new RenameOptions { Numbering = new Numbering(start, width) }));

        Assert.Equal(expected, file.Sketch());
    }

    [Fact]
    public void Numbers_count_only_layers_that_match()
    {
        var file = File(Pixel("Hair a"), Pixel("Nose"), Pixel("Hair b"));

        Apply(file, RenameEdit.ByPattern("^Hair .*$", "Hair", options: new RenameOptions { Numbering = new Numbering() }));

        Assert.Equal("Hair_1 Nose Hair_2", file.Sketch());
    }

    [Theory]
    [InlineData(-1, 1)]
    [InlineData(1, 0)]
    [InlineData(1, 10)]
    public void Numbering_has_limits(int start, int width) => Assert.Throws<ArgumentOutOfRangeException>(() => new Numbering(start, width));

    [Theory]
    [InlineData("", "is empty")]
    [InlineData(" \u3000", "is empty")]
    [InlineData("a\tb", "control character")]
    [InlineData("a\u007f", "control character")]
    public void Names_that_cannot_be_read_are_refused(string name, string problem)
    {
        var file = File(Pixel("A"), Pixel("B"));

        var error = Refused.Plan(file, RenameEdit.ByFunction((layer, _) => layer.Name == "A" ? name : "fine"), [.. file.GetLayers()]);

        Assert.Contains("'A'", error.Problem);
        Assert.Contains(problem, error.Problem);
    }

    [Fact]
    public void Half_a_character_is_refused()
    {
        var file = File(Pixel("A"));

        var error = Refused.Plan(file, RenameEdit.ByFunction((_, _) => "🌸"[..1]), [.. file.GetLayers()]);

        Assert.Contains("half a character", error.Problem);
    }

    [Fact]
    public void The_longest_name_has_255_units()
    {
        var file = File(Pixel("A"));
        Refused.Plan(file, RenameEdit.ByFunction((_, _) => new string('名', 256)), [.. file.GetLayers()]);

        Apply(file, RenameEdit.ByFunction((_, _) => new string('名', 255)));

        Assert.Equal(255, file.GetChildren()[0].Name.Length);
    }

    [Fact]
    public void Every_clash_is_named()
    {
        var file = File(Pixel("Eye 1"), Pixel("Eye 2"), Group("Arm", Pixel("Hand a"), Pixel("hand")), Pixel(" "));

        var error = Refused.Plan(file, RenameEdit.ByPattern("( [a-z0-9])$|^ $", ""), [.. file.GetLayers()]);

        foreach (var path in new[] { "'Eye 1'", "'Eye 2'", "'Arm/Hand a'", "'Arm/hand' (number 5, not renamed)", "' ' would get a name which is empty" }) Assert.Contains(path, error.Problem);
        Assert.Contains("-AllowDuplicate", error.Remedy);
    }

    [Fact]
    public void Duplicates_are_allowed_on_request_with_a_warning()
    {
        var file = File(Pixel("Eye 1"), Pixel("Eye 2"));

        var plan = Apply(file, RenameEdit.ByPattern(" .$", "", options: new RenameOptions { AllowDuplicate = true }));

        Assert.Equal("Eye Eye", file.Sketch());
        Assert.Contains("'Eye'", Assert.Single(plan.Warnings));
    }

    [Fact]
    public void Duplicates_that_were_there_and_the_same_name_in_another_group_are_no_reason()
    {
        var file = File(Pixel("Twin"), Pixel("twin"), Pixel("A"), Group("Group", Pixel("B")));

        Apply(file, RenameEdit.ByPattern("^A$", "B"));

        Assert.Equal("Twin twin B Group(B)", file.Sketch());
    }

    [Fact]
    public void Names_can_be_swapped_in_one_go()
    {
        var file = File(Pixel("Front"), Pixel("Back"), Pixel("Middle"));

        Apply(file, RenameEdit.ByList([new("Front", "Back"), new("back", "Front")]));

        Assert.Equal("Back Front Middle", file.Sketch());
    }

    [Fact]
    public void A_list_finds_layers_by_path_before_name_and_exactly_before_loosely()
    {
        var file = File(Pixel("Hand"), Group("Arm", Pixel("Hand")), Pixel("HAND 2"), Pixel("hand 2"));

        Apply(file, RenameEdit.ByList([new("Hand", "Glove"), new("Arm/Hand", "Palm"), new("hand 2", "Fist"), new("HAND 2", "Thumb")]));

        Assert.Equal("Glove Arm(Palm) Thumb Fist", file.Sketch());
    }

    [Fact]
    public void A_list_that_contradicts_itself_is_refused()
    {
        var file = File(Pixel("Hand"));

        var error = Refused.Plan(file, RenameEdit.ByList([new("Hand", "Glove"), new("Hand", "Palm")]), [.. file.GetLayers()]);

        Assert.Contains("'Glove'", error.Problem);
    }

    [Fact]
    public void Rows_that_fit_no_layer_are_passed_over_with_a_warning()
    {
        var file = File(Pixel("Hand"), Pixel("Arm"));

        var plan = Apply(file, RenameEdit.ByList([new("Leg", "Foot", Id: 1), new("Hand", "Palm", LayerNumber: 2, LayerPath: "Hand"), new("Arm", "Elbow", Id: 99, LayerNumber: 98)]));

        Assert.Equal("Palm Elbow", file.Sketch());
        Assert.Contains("'Leg' -> 'Foot'", Assert.Single(plan.Warnings));
    }

    public static TheoryData<bool, bool> Damages => new() { { false, false }, { true, false }, { false, true } };

    [Theory]
    [MemberData(nameof(Damages))]
    public void The_change_list_undoes_all_even_with_duplicates_and_Japanese_names(bool loseIds, bool moveLayers)
    {
        var file = File(Pixel("レイヤー 1"), Group("左腕", Pixel("レイヤー 1"), Pixel("レイヤー 1"), Pixel("手, \"左\"")), Pixel("Layer 1"), Pixel("layer 1"), Pixel("前髪🌸"));
        var before = file.Sketch();
        Apply(file, RenameEdit.ByFunction((layer, n) => $"部品 {n}"));
        Apply(file, RenameEdit.ByList([new("部品 1", "部品 8"), new("部品 8", "部品 1"), new("部品 2", "腕")]));
        Apply(file, new SetLayerEdit { Mark = Mark.Red });
        var rows = file.Changes.Select(ToRow).ToList();

        if (loseIds) foreach (var layer in file.GetLayers()) layer.Id = null;
        if (moveLayers) new MoveEdit(MovePlace.Before, file.GetChildren()[0]).Plan(file, [file.GetLayers().Last()]).Apply();
        var plan = Apply(file, RenameEdit.ByList(rows.Select(row => RenameEntry.FromColumns(column => row.GetValueOrDefault(column))), reverse: true));

        if (moveLayers) Assert.Equal(before.Split(' ').Order(), file.Sketch().Split(' ').Order());
        else Assert.Equal(before, file.Sketch());
        Assert.All(plan.Warnings, warning => Assert.Contains("share the name", warning));
    }

    [Fact]
    public void A_pair_of_layers_that_swapped_names_is_undone_by_name_alone()
    {
        var file = File(Pixel("B"), Pixel("A"));

        Apply(file, RenameEdit.ByList([new("A", "B", LayerPath: "A"), new("B", "A", LayerPath: "B")], reverse: true));

        Assert.Equal("A B", file.Sketch());
    }

    [Fact]
    public void A_layer_renamed_twice_goes_back_to_its_first_name()
    {
        var file = File(Pixel("A"));
        Apply(file, RenameEdit.ByPattern("A", "B"));
        Apply(file, RenameEdit.ByPattern("B", "C"));

        Apply(file, RenameEdit.ByList(file.Changes.Select(RenameEntry.From), reverse: true));

        Assert.Equal("A", file.Sketch());
    }

    [Theory]
    [InlineData("Old")]
    [InlineData("New")]
    public void A_row_without_names_is_an_error(string missing)
    {
        var error = Assert.Throws<LayeredFileException>(() => RenameEntry.FromColumns(column => column == missing ? null : ""));

        Assert.Contains(missing, error.Problem);
    }

    [Fact]
    public void A_row_whose_id_is_no_number_is_an_error()
    {
        var error = Assert.Throws<LayeredFileException>(() => RenameEntry.FromColumns(column => column == "Id" ? "seven" : "a"));

        Assert.Contains("'seven'", error.Problem);
    }

    private static Dictionary<string, string> ToRow(Change change) => new()
    {
        ["Old"] = change.Old ?? "",
        ["New"] = change.New ?? "",
        ["Id"] = change.Id?.ToString(CultureInfo.InvariantCulture) ?? "",
        ["LayerNumber"] = change.LayerNumber.ToString(CultureInfo.InvariantCulture),
        ["LayerPath"] = change.LayerPath,
        ["Property"] = change.Property,
    };
}
