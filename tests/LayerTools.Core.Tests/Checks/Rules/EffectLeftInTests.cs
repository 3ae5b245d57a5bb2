using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Checks.Rules;

public class EffectLeftInTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => ["Arm"];

    private protected override LayerFile CreateGood() => File(Pixel("Arm"));

    private protected override LayerFile CreateBad() => File(WithEffects(Pixel("Arm")), WithEffects(Pixel("Background")));

    [Fact]
    public void The_remedy_bakes_the_file() => Assert.Contains("| ConvertTo-RigFile |", Check(CreateBad())[0].Remedy, StringComparison.Ordinal);

    private static Layer WithEffects(Layer layer)
    {
        ((StubLayerDetail)layer.Detail).Uses = LayerFeatures.Effects;
        return layer;
    }
}
