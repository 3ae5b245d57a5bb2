using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Checks.Rules;

public class MaskLeftInTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => ["Body", "Body/Arm"];

    private protected override LayerFile CreateGood() => File(Pixel("Arm"), Masked(Pixel("Sketch")));

    private protected override LayerFile CreateBad() => File(Masked(Group("Body", Masked(Pixel("Arm")), Pixel("Leg"))));

    [Fact]
    public void The_remedy_bakes_the_file() => Assert.Contains("| ConvertTo-RigFile |", Check(CreateBad())[0].Remedy, StringComparison.Ordinal);

    private static Layer Masked(Layer layer)
    {
        layer.Mask = new LayerMask { Bounds = new Bounds(0, 0, 2, 2) };
        return layer;
    }
}
