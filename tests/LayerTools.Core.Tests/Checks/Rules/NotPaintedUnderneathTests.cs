using LayerTools.Checks;
using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Checks.Rules;

public class NotPaintedUnderneathTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => ["Figure/Leg L"];

    /// <summary>0.15 % of 2000 px are 3 px, which is how far the leg reaches underneath the skirt.</summary>
    private protected override LayerFile CreateGood() => Figure(overlap: 3);

    private protected override LayerFile CreateBad() => Figure(overlap: 2);

    [Fact]
    public void Says_where_and_what_to_paint()
    {
        var finding = Assert.Single(Check(CreateBad()));

        Assert.Equal("'Figure/Leg L' is not painted on far enough underneath 'Figure/Skirt'; with 'Figure/Skirt' at least 16 of 30 px of the seam would open.", finding.Message);
        Assert.StartsWith("Paint 'Figure/Leg L' on underneath 'Figure/Skirt' by 3 px, around 75, 100. To see all seams: Get-LayerFile ", finding.Remedy, StringComparison.Ordinal);
        Assert.Equal(("2 px", "3 px", Severity.Warning), (finding.Measured, finding.Limit, finding.Severity));
    }

    [Theory]
    [InlineData(0.05, 0)]
    [InlineData(0.5, 1)]
    [InlineData(0, 0)]
    [InlineData(500, 1)]
    public void The_limit_is_that_of_the_profile(double limit, int findings) => Assert.Equal(findings, Check(CreateBad(), limit).Count);

    [Fact]
    public void A_part_that_shows_what_lies_behind_it_opens_nothing()
    {
        var file = CreateBad();
        file.Find("Figure/Skirt").BlendMode = BlendMode.Multiply;
        Assert.Empty(Check(file));

        file = CreateBad();
        file.Find("Figure/Leg L").OpacityByte = 100;
        Assert.Empty(Check(file));
    }

    [Fact]
    public void A_speck_in_a_part_that_is_painted_on_is_none()
    {
        var file = Figure(overlap: 8, hole: 3);
        Assert.Empty(Check(file));
        Assert.Single(Check(Figure(overlap: 8, hole: 12)));
    }

    /// <summary>A skirt, with a shade clipped to it, that ends at row 100, in front of a leg that begins some rows above that; all on a backdrop.</summary>
    /// <param name="overlap">How far the leg is painted on underneath the skirt, px.</param>
    /// <param name="hole">Columns in the middle of the leg that are not, px.</param>
    private static LayerFile Figure(int overlap, int hole = 0)
    {
        var leg = new Bounds(60, 100 - overlap, 90, 180);
        var alpha = Enumerable.Range(0, (int)leg.Area).Select(i => i / leg.Width < overlap && i % leg.Width >= 10 && i % leg.Width < 10 + hole ? (byte)127 : (byte)128).ToArray();
        return ModelBuilder.File("hero.psd", 1000, 2000,
            ModelBuilder.Group("Figure",
                ModelBuilder.Pixel("Shade", new Bounds(0, 0, 300, 300), clipped: true),
                ModelBuilder.Pixel("Skirt", new Bounds(20, 20, 140, 100)),
                ModelBuilder.Pixel("Leg L", leg, alpha)),
            ModelBuilder.Pixel("Background", new Bounds(0, 0, 200, 200)));
    }
}
