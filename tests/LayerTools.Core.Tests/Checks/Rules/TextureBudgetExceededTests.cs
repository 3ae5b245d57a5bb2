using LayerTools.Model;
using LayerTools.Profiles;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Checks.Rules;

public class TextureBudgetExceededTests : RuleTests
{
    private protected override LayerProfile Profile => new() { Name = "test", Textures = new TextureProfile { PageSize = 1024, Padding = 4, Pages = 1 } };

    private protected override IReadOnlyList<string?> BadPaths => [null];

    private protected override LayerFile CreateGood() => CreateFigure(504);

    private protected override LayerFile CreateBad() => CreateFigure(508);

    [Fact]
    public void Any_number_of_pages_is_fine_where_the_profile_names_none() =>
        Assert.Empty(Check(CreateBad(), Profile with { Textures = Profile.Textures with { Pages = null } }));

    [Fact]
    public void A_part_larger_than_a_page_is_told_with_the_page_that_holds_it()
    {
        var file = ModelBuilder.File("hero.psd", 3000, 3000, Painting.Of("Coat").Rectangle(0, 0, 1017, 20).ToLayer(), Painting.Of("Arm").Rectangle(0, 0, 1016, 20).ToLayer());

        var finding = Assert.Single(Check(file));
        Assert.Equal("Coat", finding.LayerPath);
        Assert.Equal("1017 x 20 px", finding.Measured);
        Assert.Equal("1016 x 1016 px", finding.Limit);
        Assert.EndsWith("Measure-LayerBudget -PageSize 2048", finding.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Sketches_take_no_room() =>
        Assert.Empty(Check(ModelBuilder.File("hero.psd", 3000, 3000, Painting.Of("Sketch").Rectangle(0, 0, 2000, 2000).ToLayer(), Painting.Of("Arm").Rectangle(0, 0, 50, 20).ToLayer())));

    /// <summary>Four squares fill a page of 1024 px exactly if they and the padding between and around them do.</summary>
    private static LayerFile CreateFigure(int side) =>
        ModelBuilder.File("hero.psd", 1200, 1200, [.. Enumerable.Range(0, 4).Select(i => Painting.Of($"Part {i}").Rectangle(10 * i, 0, side, side).ToLayer())]);
}
