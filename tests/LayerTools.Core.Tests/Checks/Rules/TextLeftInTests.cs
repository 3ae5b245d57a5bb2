using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Checks.Rules;

public class TextLeftInTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => ["Body/Badge"];

    private protected override LayerFile CreateGood() => File(Pixel("Badge"), Group("Reference", Other(LayerKind.Text, "Badge")));

    private protected override LayerFile CreateBad() => File(Pixel("Arm"), Group("Body", Other(LayerKind.Text, "Badge")));

    [Fact]
    public void The_remedy_bakes_the_file() => Assert.Contains("| ConvertTo-RigFile |", Check(CreateBad())[0].Remedy, StringComparison.Ordinal);
}
