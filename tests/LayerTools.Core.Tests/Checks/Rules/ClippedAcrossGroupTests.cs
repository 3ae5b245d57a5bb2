using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Checks.Rules;

public class ClippedAcrossGroupTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => ["Shade", "Body/Light"];

    private protected override LayerFile CreateGood() => File(Clipped("Shade"), Pixel("Arm"), Group("Body", Clipped("Light"), Pixel("Torso")));

    private protected override LayerFile CreateBad() => File(Clipped("Shade"), Group("Body", Pixel("Torso"), Clipped("Light")), Pixel("Arm"));
}
