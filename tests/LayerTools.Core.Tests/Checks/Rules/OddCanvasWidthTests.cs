using LayerTools.Checks;
using LayerTools.Model;
using LayerTools.Profiles;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Checks.Rules;

public class OddCanvasWidthTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => [null];

    private protected override LayerFile CreateGood() => ModelBuilder.File("hero.psd", 100, 61);

    private protected override LayerFile CreateBad() => ModelBuilder.File("hero.psd", 101, 60);

    [Fact]
    public void A_profile_can_allow_it() => Assert.Empty(Check(CreateBad(), Profile with { Canvas = new CanvasProfile { EvenWidth = false } }));

    [Theory]
    [InlineData(101, "Set-LayerCanvas -Width 102")]
    [InlineData(29_999, "Set-LayerCanvas -Width 30000")]
    public void The_remedy_is_the_next_even_width(int width, string command)
    {
        var finding = Assert.Single(Check(ModelBuilder.File("hero.psd", width, 60)));

        Assert.Contains(command, finding.Remedy, StringComparison.Ordinal);
        Assert.Equal(FormattableString.Invariant($"{width} px"), finding.Measured);
        Assert.Equal(Severity.Error, finding.Severity);
    }
}
