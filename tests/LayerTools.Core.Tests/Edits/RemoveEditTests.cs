using LayerTools.Edits;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Edits;

public class RemoveEditTests
{
    [Theory]
    [InlineData("Brow", "Shine* Shade* Iris Hair(Strand) Back", 0)]
    [InlineData("Hair", "Brow Shine* Shade* Iris Back", 0)]
    [InlineData("Shade", "Brow Shine* Iris Hair(Strand) Back", 0)]
    [InlineData("Iris", "Brow Shine Shade Hair(Strand) Back", 1)]
    [InlineData("Iris Shade", "Brow Shine Hair(Strand) Back", 1)]
    [InlineData("Iris Shade Shine", "Brow Hair(Strand) Back", 0)]
    [InlineData("Hair Strand", "Brow Shine* Shade* Iris Back", 0)]
    public void Layers_go_and_those_clipped_to_them_stay(string chosen, string expected, int warnings)
    {
        var file = File(Pixel("Brow"), Clipped("Shine"), Clipped("Shade"), Pixel("Iris"), Group("Hair", Pixel("Strand")), Pixel("Back"));

        var plan = new RemoveEdit().Plan(file, [.. chosen.Split(' ').Select(name => file.GetLayers().Single(layer => layer.Name == name))]);
        Assert.Equal(7, file.LayerCount);
        plan.Apply();

        Assert.Equal(expected, file.Sketch());
        Assert.Equal(warnings, plan.Warnings.Count);
        Assert.Empty(plan.Results!);
        Assert.True(file.IsPictureStale);
    }

    [Fact]
    public void Every_removed_layer_is_recorded_where_it_was()
    {
        var file = File(Pixel("Brow"), Group("Hair", Pixel("Strand")));

        new RemoveEdit().Plan(file, [file.Find("Hair")]).Apply();

        Assert.Equal([(2, "Hair", "Hair", null), (3, "Hair/Strand", "Strand", null)], file.Changes.Select(change => (change.LayerNumber, change.LayerPath, change.Old!, change.New)));
    }
}
