using LayerTools.Edits;
using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Edits;

public class NewGroupEditTests
{
    private static LayerFile Face() => File(Pixel("Brow"), Clipped("Shine"), Clipped("Shade"), Pixel("Iris"), Group("Hair", Pixel("Strand"), Pixel("Tip")), Pixel("Back"));

    [Theory]
    [InlineData("", "New() Brow Shine* Shade* Iris Hair(Strand Tip) Back", false)]
    [InlineData("Brow", "New(Brow) Shine* Shade* Iris Hair(Strand Tip) Back", false)]
    [InlineData("Iris Brow", "New(Brow Shine* Shade* Iris) Hair(Strand Tip) Back", false)]
    [InlineData("Back Iris", "Brow New(Shine* Shade* Iris Back) Hair(Strand Tip)", true)]
    [InlineData("Back Tip", "Brow Shine* Shade* Iris Hair(Strand New(Tip Back))", true)]
    [InlineData("Shade", "Brow New(Shade) Shine* Iris Hair(Strand Tip) Back", true)]
    [InlineData("Hair Tip", "Brow Shine* Shade* Iris New(Hair(Strand Tip)) Back", false)]
    public void Layers_keep_their_order_in_the_new_group(string chosen, string expected, bool changesPicture)
    {
        var file = Face();
        var layers = chosen.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(name => file.GetLayers().Single(layer => layer.Name == name)).ToList();

        var plan = new NewGroupEdit("New").Plan(file, layers);
        Assert.Equal(Face().Sketch(), file.Sketch());
        plan.Apply();

        Assert.Equal(expected, file.Sketch());
        Assert.Equal(changesPicture, file.IsPictureStale);
        var group = Assert.Single(plan.Results!);
        Assert.Equal((9, BlendMode.PassThrough, LayerKind.Group, file), (group.Id, group.BlendMode, group.Kind, group.GetFile()));
        var added = file.Changes.Single(change => change.Property == "Layer");
        Assert.Equal((null, "New", group.LayerPath, group.LayerNumber, 9), (added.Old, added.New, added.LayerPath, added.LayerNumber, added.Id));
    }

    [Fact]
    public void A_file_without_layers_takes_a_group()
    {
        var file = File();

        new NewGroupEdit("New").Plan(file, []).Apply();

        Assert.Equal("New()", file.Sketch());
        Assert.Equal(1, file.GetChildren()[0].Id);
    }

    [Fact]
    public void An_id_is_found_where_the_range_is_used_up()
    {
        var file = Face();
        file.GetChildren()[0].Id = int.MaxValue;

        new NewGroupEdit("New").Plan(file, []).Apply();

        Assert.Equal(1, file.GetChildren()[0].Id);
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("hair", "'Hair' (number 5)")]
    public void Names_are_checked(string name, string reason) => Assert.Contains(reason, Refused.Plan(Face(), new NewGroupEdit(name)).Problem);

    [Fact]
    public void A_group_may_take_the_name_of_what_it_takes_in_and_of_others_if_allowed()
    {
        var file = Face();

        new NewGroupEdit("Brow").Plan(file, [file.Find("Brow")]).Apply();
        new NewGroupEdit("Back") { AllowDuplicate = true }.Plan(file, []).Apply();

        Assert.Equal("Back() Brow(Brow) Shine* Shade* Iris Hair(Strand Tip) Back", file.Sketch());
    }
}
