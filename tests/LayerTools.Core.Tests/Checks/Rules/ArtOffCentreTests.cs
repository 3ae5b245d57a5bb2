using LayerTools.Edits;
using LayerTools.Model;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;
using static LayerTools.Tests.Support.Painting;

namespace LayerTools.Tests.Checks.Rules;

public class ArtOffCentreTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => [null];

    private protected override LayerFile CreateGood() => CreateFigure(0);

    private protected override LayerFile CreateBad() => CreateFigure(-3);

    [Theory]
    [InlineData(-3, "left", "-3 px", "Set-LayerCanvas -Shift 3, 0 |")]
    [InlineData(2, "right", "2 px", "Set-LayerCanvas -Shift -2, 0 |")]
    public void Distance_and_remedy_have_their_signs(int right, string where, string measured, string command)
    {
        var finding = Assert.Single(Check(CreateFigure(right)));

        Assert.Contains($"to the {where}:", finding.Message, StringComparison.Ordinal);
        Assert.Equal((measured, "1 px"), (finding.Measured, finding.Limit));
        Assert.Contains(command, finding.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void The_remedy_puts_it_right()
    {
        var file = CreateFigure(-3);

        new CanvasEdit { Shift = (3, 0) }.Plan(file, []).Apply();

        Assert.Empty(Check(file));
    }

    [Fact]
    public void One_pixel_is_let_through() => Assert.Empty(Check(CreateFigure(1)));

    [Fact]
    public void Half_a_pixel_cannot_be_moved()
    {
        var file = File("hero.psd", 101, 60, Of("Head").Rectangle(40, 10, 20, 10).ToLayer(), Of("Body").Rectangle(30, 20, 40, 20).ToLayer(), Of("Hips").Rectangle(35, 40, 30, 10).ToLayer());

        var finding = Assert.Single(Check(file, limit: 0.25));

        Assert.Equal("-0.5 px", finding.Measured);
        Assert.Contains("-Shift 1, 0", finding.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Parts_that_do_not_agree_say_nothing() => Assert.Empty(Check(File(
        Of("A").Rectangle(0, 0, 10, 10).ToLayer(), Of("B").Rectangle(20, 0, 10, 10).ToLayer(), Of("C").Rectangle(50, 0, 10, 10).ToLayer(), Of("D").Rectangle(80, 0, 10, 10).ToLayer())));

    [Fact]
    public void Copies_of_one_thing_are_no_figure() => Assert.Empty(Check(File(
        Of("A").Rectangle(0, 0, 10, 10).ToLayer(), Of("B").Rectangle(0, 0, 10, 10).ToLayer(), Of("C").Rectangle(0, 0, 10, 10).ToLayer())));

    /// <summary>Two pairs, three parts on the line, one that leans, and a lantern somewhere else.</summary>
    private static LayerFile CreateFigure(int right) => File(
        Of("Eye L").Ellipse(55 + right, 10, 6, 4).ToLayer(),
        Of("Eye R").Ellipse(39 + right, 10, 6, 4).ToLayer(),
        Of("Arm L").Rectangle(70 + right, 20, 8, 20).ToLayer(),
        Of("Arm R").Rectangle(22 + right, 20, 8, 20).ToLayer(),
        Of("Head").Ellipse(35 + right, 2, 30, 18).ToLayer(),
        Of("Body").Rectangle(40 + right, 20, 20, 25).ToLayer(),
        Of("Neck").Rectangle(46 + right, 17, 8, 6).ToLayer(),
        Of("Scarf").Rectangle(46 + right, 20, 20, 3).Rectangle(46 + right, 23, 3, 20).ToLayer(),
        Of("Lantern").Rectangle(80, 30, 10, 20).ToLayer(),
        Of("Lantern light").Rectangle(78, 28, 14, 24).ToLayer());
}
