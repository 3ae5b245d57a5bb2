using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Profiles;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Checks.Rules;

public class OverlongNameTests : RuleTests
{
    private protected override LayerProfile Profile => base.Profile with { Naming = new NamingStyle { LongestName = 8 } };

    private protected override IReadOnlyList<string?> BadPaths => ["Upper lip"];

    private protected override LayerFile CreateGood() => ModelBuilder.File(ModelBuilder.Pixel("Eye lash"));

    private protected override LayerFile CreateBad() => ModelBuilder.File(ModelBuilder.Pixel("Upper lip"), ModelBuilder.Pixel("Lip"));

    [Fact]
    public void The_remedy_is_its_beginning()
    {
        var finding = Check(CreateBad())[0];
        Assert.EndsWith("| Rename-Layer -LiteralLayerPath 'Upper lip' -NewName 'Upper li' -Preview", finding.Remedy, StringComparison.Ordinal);
        Assert.Equal(("9 characters", "8 characters"), (finding.Measured, finding.Limit));
    }

    [Fact]
    public void No_character_is_cut_in_half() =>
        Assert.Contains("-NewName 'Painter' ", Assert.Single(Check(ModelBuilder.File(ModelBuilder.Pixel("Painter\U0001F3A8")))).Remedy, StringComparison.Ordinal);
}
