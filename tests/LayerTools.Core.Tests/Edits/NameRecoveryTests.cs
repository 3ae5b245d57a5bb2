using LayerTools.Deliveries;
using LayerTools.Edits;
using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Core.Tests.Edits;

public class NameRecoveryTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Layers_and_groups_get_their_old_names_back(bool withIds)
    {
        var (old, @new) = (Figure(), Figure());
        foreach (var layer in @new.GetLayers()) layer.Name = $"Layer {layer.LayerNumber}";
        if (!withIds) DropIds(old, @new);
        Rename(old, @new);
        Assert.Equal(["Head", "Head/Hair", "Head/Eye", "Body"], @new.GetLayers().Select(layer => layer.LayerPath));
    }

    [Fact]
    public void Says_how_each_was_found()
    {
        var (old, @new) = (Figure(), Figure());
        @new.Find("Head/Hair").Name = "Layer 1";
        @new.Find("Head/Eye").Name = "Layer 2";
        DropIds(old, @new);
        var eye = @new.Find("Head/Layer 2");
        eye.Planes[3] = ModelBuilder.Raw(PlaneRole.Color2, [.. Enumerable.Repeat((byte)0xB0, eye.Bounds.Width * eye.Bounds.Height)]);
        var rows = Recover(old, @new).Explain(@new.GetLayers());
        Assert.Equal(
            [("Head", MatchEvidence.Path, 1.0), ("Hair", MatchEvidence.Fingerprint, 1.0), ("Eye", MatchEvidence.Likeness, rows[2].Certainty), ("Body", MatchEvidence.Path, 1.0)],
            rows.Select(row => (row.Old, row.MatchedBy, row.Certainty)));
        Assert.InRange(rows[2].Certainty, 0.8, 0.999);
        Assert.Equal("It holds the same pixels as 'Head/Hair' of figure.psd.", rows[1].Why);
        Assert.Equal("It looks like 'Head/Eye' of figure.psd.", rows[2].Why);
    }

    [Fact]
    public void Never_guesses_between_two()
    {
        // Two old parts with the same pixels in the same place, and two new ones, all with other names.
        var (old, @new) = (Twins("Spark", "Glow"), Twins("Layer 1", "Layer 2"));
        DropIds(old, @new);
        var plan = Plan(old, @new);
        Assert.Empty(plan.Steps);
        Assert.Equal(
            ["'Layer 1' keeps its name. It could be 'Spark' or 'Glow' of figure.psd.", "'Layer 2' keeps its name. It could be 'Glow' or 'Spark' of figure.psd."],
plan.Warnings);
    }

    [Fact]
    public void Does_not_guess_which_of_two_copies_is_the_one()
    {
        var (old, @new) = (ModelBuilder.File(Spark("Spark")), Twins("Layer 1", "Layer 2"));
        DropIds(old, @new);
        var plan = Plan(old, @new);
        Assert.Empty(plan.Steps);
        Assert.Equal("'Layer 2' keeps its name. It could be 'Spark' of figure.psd, but so could 'Layer 1'.", Assert.Single(plan.Warnings));
    }

    [Fact]
    public void Twins_that_had_one_name_get_it()
    {
        var (old, @new) = (Twins("Spark", "Spark"), Twins("Layer 1", "Layer 2"));
        DropIds(old, @new);
        Assert.Throws<LayeredFileException>(() => Plan(old, @new));
        RenameEdit.ByRecovery(Recover(old, @new), new RenameOptions { AllowDuplicate = true }).Plan(@new, [.. @new.GetLayers()]).Apply();
        Assert.Equal(["Spark", "Spark"], @new.GetLayers().Select(layer => layer.Name));
    }

    [Fact]
    public void What_is_new_keeps_its_name()
    {
        var @new = Figure();
        var hat = Painting.Of("Hat").Rectangle(30, 0, 40, 6, rgb: 0xFF00FF).ToLayer();
        hat.Id = 77;
        @new.Root.Insert(0, hat);
        @new.Renumber();
        Assert.Empty(Plan(Figure(), @new).Steps);
        Assert.Equal((null, "Nothing in figure.psd is like it."), Recover(Figure(), @new).Explain([hat]).Select(row => (row.Old, row.Why)).Single());
    }

    [Fact]
    public void A_clash_with_a_layer_that_keeps_its_name_is_refused()
    {
        var @new = Figure();
        @new.Find("Head/Eye").Name = "Pupil";
        var other = Painting.Of("Eye").Rectangle(2, 2, 3, 50, rgb: 0x00FFFF).ToLayer();
        other.Id = 78;
        @new.Find("Head").Insert(0, other);
        @new.Renumber();
        Assert.Contains("'Eye' would be the name of 2 layers in one group", Assert.Throws<LayeredFileException>(() => Plan(Figure(), @new)).Message);
    }

    [Fact]
    public void Names_that_were_swapped_are_swapped_back()
    {
        var (old, @new) = (Figure(), Figure());
        (@new.Find("Head/Hair").Name, @new.Find("Head/Eye").Name) = ("Eye", "Hair");
        Rename(old, @new);
        Assert.Equal(["Head", "Head/Hair", "Head/Eye", "Body"], @new.GetLayers().Select(layer => layer.LayerPath));
    }

    private static LayerFile Figure() => ModelBuilder.File(
        ModelBuilder.Group("Head",
            Painting.Of("Hair").Ellipse(30, 0, 40, 20, rgb: 0x202020).Rectangle(30, 10, 6, 30, rgb: 0x303030).ToLayer(),
            Painting.Of("Eye").Ellipse(40, 10, 16, 16, rgb: 0x2060C0).ToLayer()),
        Painting.Of("Body").Rectangle(20, 30, 50, 28, rgb: 0x40A060).Ellipse(30, 32, 20, 20, rgb: 0xE0B090).ToLayer());

    private static LayerFile Twins(string one, string two) => ModelBuilder.File(Spark(one), Spark(two));

    private static Layer Spark(string name) => Painting.Of(name).Ellipse(10, 10, 20, 20, rgb: 0xFFEE88).ToLayer();

    private static void DropIds(params LayerFile[] files)
    {
        foreach (var layer in files.SelectMany(file => file.GetLayers())) layer.Id = null;
    }

    private static NameRecovery Recover(LayerFile old, LayerFile @new) => NameRecovery.Find(old, @new, TestContext.Current.CancellationToken);

    private static EditPlan Plan(LayerFile old, LayerFile @new) => RenameEdit.ByRecovery(Recover(old, @new)).Plan(@new, [.. @new.GetLayers()]);

    private static void Rename(LayerFile old, LayerFile @new) => Plan(old, @new).Apply();
}
