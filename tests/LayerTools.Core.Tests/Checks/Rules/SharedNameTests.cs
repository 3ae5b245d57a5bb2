using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Checks.Rules;

public class SharedNameTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => ["Arm R/Hand", "Legs/ribbon", "Ribbon"];

    private protected override LayerFile CreateGood()
    {
        var shade = ModelBuilder.Pixel("Shade");
        var another = ModelBuilder.Pixel("Shade");
        shade.Clipped = another.Clipped = true;
        return ModelBuilder.File(
            ModelBuilder.Group("Hat", shade, ModelBuilder.Pixel("Hat"), ModelBuilder.Pixel("Layer 1"), ModelBuilder.Pixel("Brim"), ModelBuilder.Pixel("Brim")),
            ModelBuilder.Group("Head", another, ModelBuilder.Pixel("Head"), ModelBuilder.Pixel("Layer 1")),
            ModelBuilder.Pixel("Head "),
            ModelBuilder.Group("Sketch", ModelBuilder.Pixel("Hat")));
    }

    private protected override LayerFile CreateBad() => ModelBuilder.File(
        ModelBuilder.Group("Arm L", ModelBuilder.Pixel("Hand"), ModelBuilder.Pixel("Ribbon")),
        ModelBuilder.Group("Arm R", ModelBuilder.Pixel("Hand")),
        ModelBuilder.Group("Legs", ModelBuilder.Pixel("ribbon"), ModelBuilder.Pixel("ribbon")),
        ModelBuilder.Pixel("Ribbon"));

    [Fact]
    public void Parts_of_sided_groups_get_the_side() =>
        Assert.Contains("| Rename-Layer -LayerNumber 2 -NewName 'Hand L' | Rename-Layer -LayerNumber 5 -NewName 'Hand R' | Save-LayerFile", Check(CreateBad())[0].Remedy, StringComparison.Ordinal);

    [Fact]
    public void Others_are_numbered()
    {
        var finding = Check(CreateBad())[2];
        Assert.Contains("| Rename-Layer -LayerNumber 3, 7, 8, 9 -NewName 'Ribbon {n}' -Number | Save-LayerFile", finding.Remedy, StringComparison.Ordinal);
        Assert.Equal(("4 layers", "1 layer"), (finding.Measured, finding.Limit));
        Assert.Equal("The name is shared with Arm L/Ribbon in another group.", finding.Message);
    }
}
