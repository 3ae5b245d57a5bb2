using CsCheck;
using LayerTools.Edits;
using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Profiles;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Edits;

public class OrderEditTests
{
    /// <summary>A part of each zone, front to back.</summary>
    internal static readonly string[] Words = ["Fringe", "Face", "Neck", "Torso", "Back hair"];

    /// <summary>Invented words and zones.</summary>
    internal static LayerProfile Profile { get; } = new()
    {
        Name = "test",
        Stack = ["front", "face", "neck", "torso", "hair-back"],
        Naming = new NamingStyle
        {
            Vocabulary = new Vocabulary(
            [
                Part("fringe", "front"), Part("face", "face"), Part("neck", "neck"), Part("torso", "torso"), Part("back hair", "hair-back"), Part("button", "elsewhere"),
            ]),
        },
    };

    [Theory]
    [InlineData("Fringe Face Neck Torso Back_hair", "Fringe Face Neck Torso Back_hair", 0)]
    [InlineData("Back_hair Fringe Face Neck Torso", "Fringe Face Neck Torso Back_hair", 1)]
    [InlineData("Torso Neck Face Fringe", "Fringe Face Neck Torso", 3)]
    [InlineData("Face_R Fringe Face_L", "Fringe Face_R Face_L", 1)]
    [InlineData("Torso Mystery Neck", "Mystery Neck Torso", 1)]
    [InlineData("Mystery Torso Neck", "Neck Mystery Torso", 2)]
    [InlineData("Torso Neck Mystery", "Neck Torso Mystery", 1)]
    [InlineData("Button Mystery", "Button Mystery", 0)]
    [InlineData("Torso Face_sketch Neck", "Face_sketch Neck Torso", 1)]
    [InlineData("Guide Face_sketch Torso Neck", "Guide Face_sketch Neck Torso", 1)]
    [InlineData("Mystery Guide Neck Fringe", "Fringe Mystery Guide Neck", 3)]
    public void The_stack_is_put_in_order_with_few_moves(string before, string after, int steps)
    {
        var file = File([.. before.Split(' ').Select(name => Pixel(name.Replace('_', ' ')))]);

        var plan = new OrderEdit(Profile).Plan(file, [.. file.GetLayers()]);
        Assert.Equal(before, file.Sketch());
        plan.Apply();

        Assert.Equal(after, file.Sketch());
        Assert.InRange(plan.Steps.Count, steps, steps == 0 ? 0 : steps + 1);
    }

    [Fact]
    public void A_group_with_an_unknown_part_in_it_stays_where_it_lies()
    {
        var file = File(Group("Any", Pixel("Fringe"), Pixel("Mystery")), Pixel("Neck"), Group("Some", Pixel("Face L"), Pixel("Button")));

        new OrderEdit(Profile).Plan(file, [.. file.GetLayers()]).Apply();

        Assert.Equal("Some(Face_L Button) Any(Fringe Mystery) Neck", file.Sketch());
    }

    // "Hat", "Badge", "Scarf tail": the names of the invented demo figure.
    [Fact]
    public void Pieces_of_a_thing_and_names_of_two_parts_stay_where_they_are()
    {
        var before = File(Group("Lantern", Pixel("Lantern cap"), Pixel("Flame")), Group("Hat", Pixel("Badge"), Pixel("Hat top")), Pixel("Fringe"), Pixel("Scarf tail"), Pixel("Coat"));

        Assert.Empty(new OrderEdit(LayerProfiles.Default).Plan(before, [.. before.GetLayers()]).Steps);
    }

    [Fact]
    public void Groups_are_ordered_inside_and_among_each_other()
    {
        var file = File(Group("Rest", Pixel("Torso 2"), Pixel("Torso")), Group("Head", Pixel("Neck"), Group("Any", Pixel("Face L"), Pixel("Face R"))), Pixel("Fringe"));

        new OrderEdit(Profile).Plan(file, [.. file.GetLayers()]).Apply();

        // 'Rest' and 'Any' are what their members agree on; 'Head' holds two zones and lies on the fringe.
        Assert.Equal("Head(Any(Face_L Face_R) Neck) Fringe Rest(Torso_2 Torso)", file.Sketch());
    }

    [Fact]
    public void Clipped_layers_go_along_with_their_base()
    {
        var file = File(Clipped("Fringe shade"), Pixel("Torso"), Clipped("Shade"), Clipped("Light"), Pixel("Face"));

        var plan = new OrderEdit(Profile).Plan(file, [.. file.GetLayers()]);
        plan.Apply();

        Assert.Equal("Shade* Light* Face Fringe_shade* Torso", file.Sketch());
        Assert.Empty(plan.Warnings);
    }

    [Fact]
    public void Each_moved_layer_tells_where_from_and_where_to()
    {
        var file = File(Group("Body", Pixel("Back hair"), Pixel("Face"), Pixel("Neck")));

        new OrderEdit(Profile).Plan(file, [.. file.GetLayers()]).Apply();

        var change = Assert.Single(file.Changes);
        Assert.Equal(("Body/Back hair", "Place", "Body, place 1", "Body, place 3, behind 'Neck'"), (change.LayerPath, change.Property, change.Old, change.New));
        Assert.True(file.IsPictureStale);
    }

    [Fact]
    public void A_choice_limits_the_groups()
    {
        LayerFile Create() => File(Group("One", Pixel("Neck"), Pixel("Face")), Group("Two", Pixel("Torso"), Pixel("Neck")), Pixel("Fringe"));
        string Order(Func<LayerFile, Layer[]> choose)
        {
            var file = Create();
            new OrderEdit(Profile).Plan(file, choose(file)).Apply();
            return file.Sketch();
        }

        Assert.Equal("One(Face Neck) Two(Torso Neck) Fringe", Order(file => [file.Find("One")]));
        Assert.Equal("One(Neck Face) Two(Neck Torso) Fringe", Order(file => [file.Find("Two/Torso")]));
    }

    [Fact]
    public void Layers_that_mix_with_others_are_warned_about()
    {
        var glow = Pixel("Glow");
        glow.BlendMode = BlendMode.Multiply;
        var file = File(Pixel("Fringe"), Pixel("Neck"), glow, Pixel("Torso"), Pixel("Face"), Pixel("Face R"), Other(LayerKind.Adjustment, "Tone"));

        var warnings = new OrderEdit(Profile).Plan(file, [.. file.GetLayers()]).Warnings;

        Assert.Collection(warnings, along => Assert.Contains("'Glow'", along), mixing => Assert.EndsWith("changes: 'Glow'.", mixing));
    }

    [Fact]
    public void A_profile_without_an_order_or_words_is_refused()
    {
        Assert.Contains("no order", Refused.Plan(File(Pixel("Face")), new OrderEdit(Profile with { Stack = [] })).Problem);
        Assert.Contains("no words", Refused.Plan(File(Pixel("Face")), new OrderEdit(Profile with { Naming = new NamingStyle() })).Problem);
    }

    [Fact]
    public void Ordered_twice_is_ordered_once_and_nothing_is_lost() => Gen.Int[0, 7].Array[0, 12].Sample(kinds =>
    {
        var file = File([.. kinds.Select((kind, i) => kind < 5 ? Pixel($"{Words[kind]} {i}") : kind == 5 ? Clipped($"Shade {i}") : Pixel($"Mystery {i}"))]);
        var before = file.GetLayers().ToList();
        var bases = before.Where(layer => layer.Clipped).ToDictionary(layer => layer, layer => ClippingRun.Of(layer).Base);

        new OrderEdit(Profile).Plan(file, before).Apply();

        Assert.Equal(before.ToHashSet(), file.GetLayers().ToHashSet());
        Assert.All(bases, pair => Assert.Equal(pair.Value, ClippingRun.Of(pair.Key).Base));
        Assert.Empty(new OrderEdit(Profile).Plan(file, [.. file.GetLayers()]).Steps);
    });

    private static VocabularyPart Part(string word, string zone) => new() { Key = word.Replace(' ', '-'), English = word, Japanese = string.Empty, Zone = zone };
}
