using LayerTools.Model;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Model;

public class ClippingRunTests
{
    [Theory]
    [InlineData("Shine", "Iris", "Shine Shade")]
    [InlineData("Shade", "Iris", "Shine Shade")]
    [InlineData("Iris", "Iris", "Shine Shade")]
    [InlineData("White", "White", "")]
    [InlineData("Stray", null, "Stray")]
    public void Of_finds_the_base_and_what_is_clipped_to_it(string name, string? expectedBase, string expectedClipped)
    {
        var file = File(Pixel("Brow"), Clipped("Shine"), Clipped("Shade"), Pixel("Iris"), Pixel("White"), Clipped("Stray"));

        var run = ClippingRun.Of(file.GetLayers().Single(layer => layer.Name == name));

        Assert.Equal(expectedBase, run.Base?.Name);
        Assert.Equal(expectedClipped, string.Join(" ", run.Clipped.Select(layer => layer.Name)));
        Assert.Equal(run.Clipped.Count + (run.Base is null ? 0 : 1), run.Layers.Count);
    }
}
