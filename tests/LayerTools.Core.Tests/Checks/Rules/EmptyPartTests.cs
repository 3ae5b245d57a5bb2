using LayerTools.Model;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;
using static LayerTools.Tests.Support.Painting;

namespace LayerTools.Tests.Checks.Rules;

public class EmptyPartTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => ["Head/Nose", "Head/Hair"];

    private protected override LayerFile CreateGood() => File(
        Of("Arm").Rectangle(10, 10, 1, 1, alpha: 8).ToLayer(),
        Group("Empty group"),
        Other(LayerKind.Adjustment, "Curves"),
        Of("Sketch").Rectangle(0, 0, 5, 5, alpha: 0).ToLayer(),
        Group("Guides", Of("Left").Rectangle(0, 0, 5, 5, alpha: 0).ToLayer()));

    private protected override LayerFile CreateBad() => File(Group("Head", Of("Nose").Rectangle(10, 10, 5, 5, alpha: 0).ToLayer(), Of("Hair").Rectangle(10, 10, 5, 5, alpha: 7).ToLayer()));

    [Fact]
    public void What_is_there_and_not_seen_is_measured()
    {
        var findings = Check(CreateBad());

        Assert.Equal(["0 px² of alpha 1 to 7", "25 px² of alpha 1 to 7"], findings.Select(finding => finding.Measured));
        Assert.Contains("| Remove-Layer -LiteralLayerPath 'Head/Nose' |", findings[0].Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_that_its_mask_hides_is_empty()
    {
        var layer = Of("Arm").Rectangle(10, 10, 5, 5).ToLayer();
        layer.Mask = new LayerMask { Bounds = Bounds.Empty, DefaultColor = 0 };

        Assert.Single(Check(File(layer)));
    }
}
