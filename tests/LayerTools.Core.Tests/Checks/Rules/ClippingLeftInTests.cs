using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Checks.Rules;

public class ClippingLeftInTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => ["Shade", "Light"];

    private protected override LayerFile CreateGood() => File(Pixel("Shade"), Pixel("Arm"), Clipped("Sketch"), Pixel("Leg"));

    private protected override LayerFile CreateBad() => File(Clipped("Shade"), Clipped("Light"), Pixel("Arm"));

    [Fact]
    public void The_remedy_bakes_the_file() => Assert.Contains("| ConvertTo-RigFile |", Check(CreateBad())[0].Remedy, StringComparison.Ordinal);
}
