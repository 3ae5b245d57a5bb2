using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Checks.Rules;

public class SketchOrGuideLayerTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => ["Rough", "ガイド", "Body/Arm sketch"];

    private protected override LayerFile CreateGood() => File(Pixel("Arm"), Pixel("Background"), Pixel("Sketchbook"));

    private protected override LayerFile CreateBad() => File(Pixel("Rough"), Group("ガイド", Pixel("Lines"), Pixel("Guide 2")), Group("Body", Pixel("Arm sketch"), Pixel("Arm")));

    [Fact]
    public void The_remedy_removes_the_layer() => Assert.Contains("| Remove-Layer -LiteralLayerPath 'Rough' |", Check(CreateBad())[0].Remedy, StringComparison.Ordinal);
}
