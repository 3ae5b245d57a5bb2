using LayerTools.Edits;
using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Edits;

public class MoveEditTests
{
    /// <summary>Front to back: Brow, an iris with two layers clipped to it, White, a group with a clipped pair, Back.</summary>
    private static LayerFile Face() => File(
        Pixel("Brow"), Clipped("Shine"), Clipped("Shade"), Pixel("Iris"), Pixel("White"), Group("Hair", Clipped("Light"), Pixel("Strand"), Group("Inner")), Pixel("Back"));

    private static Layer[] Choose(LayerFile file, string names) => [.. names.Split(' ').Select(name => file.GetLayers().Single(layer => layer.Name == name))];

    [Theory]

    // Plain moves.
    [InlineData("Brow", MovePlace.After, "White", "Shine* Shade* Iris White Brow Hair(Light* Strand Inner()) Back")]
    [InlineData("Back", MovePlace.Before, "Brow", "Back Brow Shine* Shade* Iris White Hair(Light* Strand Inner())")]
    [InlineData("White", MovePlace.Into, "Hair", "Brow Shine* Shade* Iris Hair(White Light* Strand Inner()) Back")]
    [InlineData("White", MovePlace.Into, "Inner", "Brow Shine* Shade* Iris Hair(Light* Strand Inner(White)) Back")]
    [InlineData("Inner", MovePlace.Before, "White", "Brow Shine* Shade* Iris Inner() White Hair(Light* Strand) Back")]

    // The order of several layers is kept, however they were chosen.
    [InlineData("Back Brow", MovePlace.Before, "White", "Shine* Shade* Iris Brow Back White Hair(Light* Strand Inner())")]
    [InlineData("Back Brow", MovePlace.After, "White", "Shine* Shade* Iris White Brow Back Hair(Light* Strand Inner())")]

    // What lies in a chosen group goes with the group.
    [InlineData("Strand Hair", MovePlace.Before, "Brow", "Hair(Light* Strand Inner()) Brow Shine* Shade* Iris White Back")]

    // A base takes its clipped layers along.
    [InlineData("Iris", MovePlace.After, "White", "Brow White Shine* Shade* Iris Hair(Light* Strand Inner()) Back")]
    [InlineData("Iris Shade", MovePlace.Into, "Inner", "Brow White Hair(Light* Strand Inner(Shine* Shade* Iris)) Back")]

    // Nothing comes between a base and its clipped layers.
    [InlineData("Back", MovePlace.Before, "Iris", "Brow Back Shine* Shade* Iris White Hair(Light* Strand Inner())")]
    [InlineData("Back", MovePlace.Before, "Shade", "Brow Back Shine* Shade* Iris White Hair(Light* Strand Inner())")]
    [InlineData("Back", MovePlace.Before, "Shine", "Brow Back Shine* Shade* Iris White Hair(Light* Strand Inner())")]
    [InlineData("Back", MovePlace.After, "Shine", "Brow Shine* Shade* Iris Back White Hair(Light* Strand Inner())")]
    [InlineData("Back", MovePlace.After, "Iris", "Brow Shine* Shade* Iris Back White Hair(Light* Strand Inner())")]

    // Clipped layers change places among themselves.
    [InlineData("Shade", MovePlace.Before, "Shine", "Brow Shade* Shine* Iris White Hair(Light* Strand Inner()) Back")]
    [InlineData("Shine", MovePlace.After, "Shade", "Brow Shade* Shine* Iris White Hair(Light* Strand Inner()) Back")]
    [InlineData("Shine", MovePlace.Before, "Iris", "Brow Shade* Shine* Iris White Hair(Light* Strand Inner()) Back")]

    // A clipped layer that leaves its base is released.
    [InlineData("Shine", MovePlace.Before, "Brow", "Shine Brow Shade* Iris White Hair(Light* Strand Inner()) Back")]
    [InlineData("Shade", MovePlace.After, "Iris", "Brow Shine* Iris Shade White Hair(Light* Strand Inner()) Back")]
    [InlineData("Light", MovePlace.Before, "Shade", "Brow Light Shine* Shade* Iris White Hair(Strand Inner()) Back")]
    public void Move(string chosen, MovePlace place, string target, string expected)
    {
        var file = Face();

        var plan = new MoveEdit(place, Choose(file, target)[0]).Plan(file, Choose(file, chosen));
        Assert.Equal(Face().Sketch(), file.Sketch());
        plan.Apply();

        Assert.Equal(expected, file.Sketch());
        Assert.True(file.IsPictureStale);
        Assert.Equal(Enumerable.Range(1, 10), file.GetLayers().Select(layer => layer.LayerNumber));
        Assert.NotEmpty(file.Changes);
    }

    [Fact]
    public void Clipped_layers_without_a_base_get_none_by_a_move()
    {
        var file = File(Pixel("A"), Pixel("B"), Clipped("Stray"));

        new MoveEdit(MovePlace.After, file.Find("Stray")).Plan(file, [file.Find("A")]).Apply();

        Assert.Equal("B A Stray*", file.Sketch());
    }

    [Fact]
    public void What_moves_is_told_with_its_places()
    {
        var file = Face();

        var plan = new MoveEdit(MovePlace.Into, file.Find("Hair")).Plan(file, Choose(file, "Shine"));

        Assert.Equal(
            [("Shine", "Place", "outermost, place 2", "Hair, place 1"), ("Shine", "Clipped", "True", "False")],
            plan.Steps.Select(step => (step.LayerPath, step.Property, step.Old!, step.New!)));
        Assert.Contains("'Shine'", Assert.Single(plan.Warnings));
    }

    [Fact]
    public void Layers_that_go_along_are_told()
    {
        var file = Face();

        var plan = new MoveEdit(MovePlace.Before, file.Find("Brow")).Plan(file, Choose(file, "Iris"));

        Assert.Contains("'Shine', 'Shade'", Assert.Single(plan.Warnings));
        Assert.Equal(["Shine", "Shade", "Iris"], plan.Steps.Select(step => step.LayerPath));
    }

    [Theory]
    [InlineData("White", MovePlace.Before, "Hair")]
    [InlineData("Shine Shade", MovePlace.Before, "Iris")]
    [InlineData("Iris", MovePlace.After, "Brow")]
    public void A_move_to_the_same_place_changes_nothing(string chosen, MovePlace place, string target)
    {
        var file = Face();

        var plan = new MoveEdit(place, Choose(file, target)[0]).Plan(file, Choose(file, chosen));
        plan.Apply();

        Assert.Empty(plan.Steps);
        Assert.False(file.IsPictureStale);
    }

    [Theory]
    [InlineData("Hair", MovePlace.Into, "Inner", "'Hair' would move into itself, to 'Hair/Inner'")]
    [InlineData("Hair", MovePlace.Before, "Strand", "'Hair' would move into itself")]
    [InlineData("Hair", MovePlace.Into, "Hair", "'Hair' moves and is the target")]
    [InlineData("Iris", MovePlace.Before, "Shine", "'Shine' moves and is the target")]
    [InlineData("Brow", MovePlace.Into, "White", "'White' is no group")]
    public void Impossible_moves_are_refused(string chosen, MovePlace place, string target, string reason)
    {
        var file = Face();

        var error = Refused.Plan(file, new MoveEdit(place, Choose(file, target)[0]), Choose(file, chosen));

        Assert.Contains(reason, error.Problem);
    }

    [Fact]
    public void A_target_in_another_file_is_refused()
    {
        var file = Face();

        Refused.Plan(file, new MoveEdit(MovePlace.Before, Face().Find("Brow")), Choose(file, "Back"));
    }
}
