using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Checks.Rules;

public class HiddenLayerTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => ["Arm", "Old"];

    private protected override LayerFile CreateGood() => File(Pixel("Arm"), Hide(Pixel("Sketch")));

    private protected override LayerFile CreateBad() => File(Hide(Pixel("Arm")), Hide(Group("Old", Pixel("Leg"), Hide(Pixel("Foot")))), Pixel("Torso"));

    [Fact]
    public void The_remedy_shows_the_layer() => Assert.Contains("| Set-Layer -Visible $true -LiteralLayerPath 'Arm' |", Check(CreateBad())[0].Remedy, StringComparison.Ordinal);

    private static Layer Hide(Layer layer)
    {
        layer.Visible = false;
        return layer;
    }
}
