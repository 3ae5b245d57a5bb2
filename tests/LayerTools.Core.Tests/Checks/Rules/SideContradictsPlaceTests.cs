using LayerTools.Edits;
using LayerTools.Model;
using LayerTools.Names;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;
using static LayerTools.Tests.Support.Painting;

namespace LayerTools.Tests.Checks.Rules;

public class SideContradictsPlaceTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => ["Brow L", "Brow R", "Arm R"];

    /// <summary>The figure's own left lies in the right half. A hand that crosses the line, and a turned head whose both eyes lie on one side.</summary>
    private protected override LayerFile CreateGood() => File(
        Of("Hand L").Rectangle(30, 30, 23, 5).ToLayer(),
        Of("Hand R").Rectangle(20, 30, 10, 5).ToLayer(),
        Of("Eye L").Rectangle(60, 10, 5, 5).ToLayer(),
        Of("Eye R").Rectangle(52, 10, 5, 5).ToLayer(),
        Of("Sketch R").Rectangle(80, 10, 5, 5).ToLayer(),
        Of("Nose").Rectangle(80, 10, 5, 5).ToLayer());

    private protected override LayerFile CreateBad() => File(
        Of("Brow L").Rectangle(30, 10, 5, 5).ToLayer(),
        Of("Brow R").Rectangle(65, 10, 5, 5).ToLayer(),
        Group("Arm R", Of("Hand").Rectangle(80, 30, 5, 5).ToLayer(), Of("Sleeve").Rectangle(70, 20, 10, 10).ToLayer()),
        Of("Ear L").Rectangle(70, 5, 5, 5).ToLayer(),
        Of("Ear R").Rectangle(25, 5, 5, 5).ToLayer(),
        Of("Leg L").Rectangle(52, 40, 5, 20).ToLayer(),
        Of("Leg R").Rectangle(43, 40, 5, 20).ToLayer());

    [Fact]
    public void Half_and_side_are_told()
    {
        var findings = Check(CreateBad());

        Assert.Equal("Its name says left, but it lies in the left half of the canvas, which is the figure's own right.", findings[0].Message);
        Assert.Equal(("100 % beyond the centre line", "less than 90 %"), (findings[0].Measured, findings[0].Limit));
        Assert.Contains("| Rename-Layer -NewName 'Arm L' -LiteralLayerPath 'Arm R' |", findings[2].Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pair_changes_names_at_once()
    {
        var file = CreateBad();

        Assert.All(Check(file).Take(2), finding => Assert.Matches(@"\| Rename-Layer -Map @\{ 'Brow [LR]' = 'Brow [LR]'; 'Brow [LR]' = 'Brow [LR]' \} -LayerNumber 1, 2 \|", finding.Remedy));

        RenameEdit.ByList([new RenameEntry("Brow L", "Brow R"), new RenameEntry("Brow R", "Brow L")], reverse: false).Plan(file, [.. file.GetChildren().Take(2)]).Apply();
        Assert.Equal("Arm R", Assert.Single(Check(file)).LayerPath);
    }

    [Fact]
    public void A_file_that_means_the_viewers_sides_is_told_once()
    {
        var figure = File(
            Of("Brow L").Rectangle(30, 10, 5, 5).ToLayer(),
            Of("Brow R").Rectangle(65, 10, 5, 5).ToLayer(),
            Of("Arm R").Rectangle(80, 30, 5, 5).ToLayer(),
            Of("Arm L").Rectangle(15, 30, 5, 5).ToLayer());

        var finding = Assert.Single(Check(figure));

        Assert.Null(finding.LayerPath);
        Assert.Equal("4 of 4 names", finding.Measured);
        Assert.Empty(Check(figure, Profile with { Naming = new NamingStyle { Sides = new SideStyle { Owner = SideOwner.Viewer } } }));
    }

    [Fact]
    public void The_limit_is_a_share_of_the_width()
    {
        var file = File(Of("Hand L").Rectangle(30, 30, 22, 5).ToLayer());

        Assert.Single(Check(file));
        Assert.Empty(Check(file, limit: 91));
    }
}
