using LayerTools.Edits;
using LayerTools.Model;
using LayerTools.Profiles;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;
using static LayerTools.Tests.Support.Painting;

namespace LayerTools.Tests.Checks.Rules;

public class PixelsOutsideCanvasTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => ["Hair", "Shoe"];

    private protected override LayerFile CreateGood() => File(
        Of("Body").Rectangle(0, 0, 100, 60).ToLayer(),
        Of("Arm").Rectangle(50, 10, 50, 10).Within(new Bounds(50, -10, 130, 70)).ToLayer(),
        Of("Backdrop").Rectangle(-10, -10, 120, 80).ToLayer());

    private protected override LayerFile CreateBad() => File(Of("Hair").Rectangle(-3, -2, 20, 10).ToLayer(), Of("Shoe").Rectangle(90, 50, 11, 15, alpha: 1).ToLayer());

    [Fact]
    public void Area_and_distances_are_told()
    {
        var findings = Check(CreateBad());

        Assert.Equal(["64 px²", "65 px²"], findings.Select(finding => finding.Measured));
        Assert.Contains("by 3 px at the left, by 2 px at the top.", findings[0].Message, StringComparison.Ordinal);
        Assert.Contains("by 1 px at the right, by 5 px at the bottom.", findings[1].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_remedy_makes_room_for_all_parts_and_keeps_the_centre_line()
    {
        Assert.All(Check(CreateBad()), finding => Assert.Contains("Set-LayerCanvas -Width 106 -Height 67 -Shift 3, 2 |", finding.Remedy, StringComparison.Ordinal));

        var file = CreateBad();
        new CanvasEdit { Width = 106, Height = 67, Shift = (3, 2) }.Plan(file, []).Apply();
        Assert.Empty(Check(file));
    }

    [Theory]
    [InlineData(-4, "Set-LayerCanvas -Shift 0, 4 |")]
    [InlineData(35, "Set-LayerCanvas -Shift 0, -5 |")]
    public void Parts_that_fit_are_moved_up_or_down(int top, string command)
    {
        var file = File(Of("Body").Rectangle(10, top, 80, 30).ToLayer());

        Assert.Contains(command, Assert.Single(Check(file)).Remedy, StringComparison.Ordinal);
        new CanvasEdit { Shift = (0, top < 0 ? 4 : -5) }.Plan(file, []).Apply();
        Assert.Empty(Check(file));
    }

    [Fact]
    public void A_profile_that_fixes_the_size_leaves_only_the_hand()
    {
        var findings = Check(CreateBad(), Profile with { Canvas = new CanvasProfile { Width = 100 } });

        Assert.All(findings, finding => Assert.DoesNotContain("Set-LayerCanvas", finding.Remedy, StringComparison.Ordinal));
    }

    [Fact]
    public void The_limit_is_an_area() => Assert.Equal("Shoe", Assert.Single(Check(CreateBad(), limit: 64)).LayerPath);
}
