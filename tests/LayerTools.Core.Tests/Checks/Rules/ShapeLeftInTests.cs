using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Checks.Rules;

public class ShapeLeftInTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => ["Button", "Shirt"];

    private protected override LayerFile CreateGood() => File(Pixel("Button"), Other(LayerKind.Fill, "Background"));

    private protected override LayerFile CreateBad() => File(Other(LayerKind.Shape, "Button"), Other(LayerKind.Fill, "Shirt"));

    [Fact]
    public void The_remedy_bakes_the_file() => Assert.Contains("| ConvertTo-RigFile |", Check(CreateBad())[0].Remedy, StringComparison.Ordinal);
}
