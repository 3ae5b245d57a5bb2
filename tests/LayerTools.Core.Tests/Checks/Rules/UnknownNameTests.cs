using LayerTools.Model;
using LayerTools.Profiles;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Checks.Rules;

public class UnknownNameTests : RuleTests
{
    private protected override LayerProfile Profile => LayerProfiles.Default;

    private protected override IReadOnlyList<string?> BadPaths => ["Zorp", "Head/ブラック"];

    private protected override LayerFile CreateGood() =>
        ModelBuilder.File(ModelBuilder.Group("head", ModelBuilder.Pixel("EyeLash_R 02"), ModelBuilder.Pixel("前髪 先")), ModelBuilder.Pixel("Layer 3"), ModelBuilder.Pixel("Sketch"));

    private protected override LayerFile CreateBad() => ModelBuilder.File(ModelBuilder.Pixel("Zorp"), ModelBuilder.Group("Head", ModelBuilder.Pixel("ブラック"), ModelBuilder.Pixel("Hat")));

    [Fact]
    public void The_remedy_shows_why() =>
        Assert.EndsWith("| Rename-Layer -LiteralLayerPath 'Zorp' -Normalize -Profile 'figure' -Preview", Check(CreateBad())[0].Remedy, StringComparison.Ordinal);

    [Fact]
    public void Without_a_vocabulary_nothing_is_asked() => Assert.Empty(Check(CreateBad(), base.Profile));
}
