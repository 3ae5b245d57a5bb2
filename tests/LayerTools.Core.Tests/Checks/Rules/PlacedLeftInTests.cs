using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Checks.Rules;

public class PlacedLeftInTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => ["Body/Eye L"];

    private protected override LayerFile CreateGood() => File(Pixel("Eye L"), Group("Reference", Other(LayerKind.Placed, "Eye L")));

    private protected override LayerFile CreateBad() => File(Pixel("Arm"), Group("Body", Other(LayerKind.Placed, "Eye L")));

    [Fact]
    public void The_remedy_bakes_the_file() => Assert.Contains("| ConvertTo-RigFile |", Check(CreateBad())[0].Remedy, StringComparison.Ordinal);
}
