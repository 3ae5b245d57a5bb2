using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Profiles;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Checks.Rules;

public class TooLittleDetailTests : RuleTests
{
    private protected override LayerProfile Profile => new()
    {
        Name = "test",
        Naming = new NamingStyle { Vocabulary = Vocabulary.BuiltIn },
        Screens = [new ScreenSize("Small", 400, 200), ScreenSize.Common],
    };

    private protected override IReadOnlyList<string?> BadPaths => [null];

    private protected override LayerFile CreateGood() => CreateFigure(200);

    private protected override LayerFile CreateBad() => CreateFigure(160);

    [Fact]
    public void The_finding_says_how_much_and_what_canvas_would_do()
    {
        var finding = Assert.Single(Check(CreateBad()));

        Assert.Contains("face", finding.Message, StringComparison.Ordinal);
        Assert.Equal("1.25 screen px per canvas px", finding.Measured);
        Assert.Equal("1 screen px per canvas px", finding.Limit);
        // 401 and 900 times 1.25 are 501.25 and 1125; the width goes up to the next even number.
        Assert.Contains("502 x 1125 px", finding.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_profile_can_allow_more() => Assert.Empty(Check(CreateBad(), 1.25));

    [Fact]
    public void A_figure_without_a_face_is_left_alone() =>
        Assert.Empty(Check(ModelBuilder.File("hero.psd", 400, 900, Painting.Of("Boot L").Rectangle(0, 0, 20, 20).ToLayer())));

    private static LayerFile CreateFigure(int faceHeight) => ModelBuilder.File("hero.psd", 401, 900,
        Painting.Of("Face").Rectangle(100, 40, 100, faceHeight).ToLayer(),
        Painting.Of("Torso").Rectangle(50, 220, 300, 400).ToLayer());
}
