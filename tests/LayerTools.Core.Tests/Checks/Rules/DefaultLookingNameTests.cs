using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Checks.Rules;

public class DefaultLookingNameTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => ["グループ 4", "グループ 4/Layer 37", "レイヤー 2 のコピー"];

    private protected override LayerFile CreateGood() => ModelBuilder.File(ModelBuilder.Group("Layered skirt", ModelBuilder.Pixel("Eye L 2")), ModelBuilder.Pixel("Group of stars"));

    private protected override LayerFile CreateBad() => ModelBuilder.File(ModelBuilder.Group("グループ 4", ModelBuilder.Pixel("Layer 37"), ModelBuilder.Pixel("Hat")), ModelBuilder.Pixel("レイヤー 2 のコピー"));

    [Fact]
    public void The_remedy_is_a_rename_to_fill_in_that_changes_nothing_yet() =>
        Assert.EndsWith("| Rename-Layer -LiteralLayerPath 'グループ 4/Layer 37' -NewName 'what it is' -Preview", Check(CreateBad())[1].Remedy, StringComparison.Ordinal);
}
