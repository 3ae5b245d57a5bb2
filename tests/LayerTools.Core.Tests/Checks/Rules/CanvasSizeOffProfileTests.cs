using LayerTools.Model;
using LayerTools.Profiles;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Checks.Rules;

public class CanvasSizeOffProfileTests : RuleTests
{
    private protected override LayerProfile Profile => base.Profile with { Canvas = new CanvasProfile { Width = 100, Height = 80 } };

    private protected override IReadOnlyList<string?> BadPaths => [null];

    private protected override LayerFile CreateGood() => ModelBuilder.File("hero.psd", 100, 80);

    private protected override LayerFile CreateBad() => ModelBuilder.File("hero.psd", 100, 79);

    [Theory]
    [InlineData(90, "Set-LayerCanvas -Width 100 -Height 80 -CenterOn 45 |")]
    [InlineData(91, "Set-LayerCanvas -Width 100 -Height 80 |")]
    public void The_remedy_keeps_the_figure_centred_where_whole_pixels_can(int width, string command) =>
        Assert.Contains(command, Assert.Single(Check(ModelBuilder.File("hero.psd", width, 80))).Remedy, StringComparison.Ordinal);

    [Theory]
    [InlineData(200, 160, "| Resize-LayerFile -Width 100 |")]
    [InlineData(50, 40, "Deliver the figure in its full size")]
    [InlineData(50, 42, "| Set-LayerCanvas -Width 100 -Height 80 -CenterOn 25 |")]
    public void The_same_figure_at_another_scale_gets_no_larger_canvas_around_it(int width, int height, string remedy) =>
        Assert.Contains(remedy, Assert.Single(Check(ModelBuilder.File("hero.psd", width, height))).Remedy, StringComparison.Ordinal);

    [Fact]
    public void A_side_that_the_profile_does_not_name_is_left_alone()
    {
        var profile = Profile with { Canvas = new CanvasProfile { Height = 80 } };

        Assert.Empty(Check(ModelBuilder.File("hero.psd", 33, 80), profile));
        Assert.Equal("33 x 80 px", Assert.Single(Check(ModelBuilder.File("hero.psd", 33, 70), profile)).Limit);
    }
}
