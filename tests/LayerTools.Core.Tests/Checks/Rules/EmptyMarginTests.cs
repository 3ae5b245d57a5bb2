using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Checks.Rules;

public class EmptyMarginTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => ["Arms/Arm L"];

    private protected override LayerFile CreateGood() => ModelBuilder.File(
        Painting.Of("Tight").Ellipse(10, 10, 20, 20).ToLayer(),
        Painting.Of("Half").Within(new Bounds(10, 10, 30, 30)).Rectangle(10, 10, 10, 20).ToLayer(),
        Painting.Of("Nothing").Within(new Bounds(0, 0, 100, 60)).ToLayer());

    private protected override LayerFile CreateBad() => ModelBuilder.File(
        ModelBuilder.Group("Arms", Painting.Of("Arm L").Within(new Bounds(10, 10, 30, 30)).Rectangle(10, 10, 10, 19).ToLayer()),
        Masked());

    [Fact]
    public void It_says_how_much_is_clear() => Assert.Equal(("52.5 % clear", "50 %"), (Check(CreateBad())[0].Measured, Check(CreateBad())[0].Limit));

    [Fact]
    public void A_profile_can_ask_for_more() => Assert.Equal(2, Check(ModelBuilder.File(CreateBad().GetChildren()[0], CreateGood().GetChildren()[1]), 49).Count);

    private static Layer Masked()
    {
        var layer = Painting.Of("Masked").Within(new Bounds(0, 0, 90, 50)).Rectangle(10, 10, 10, 10).ToLayer();
        layer.Mask = new LayerMask { Bounds = new Bounds(0, 0, 1, 1), DefaultColor = 255 };
        layer.Planes.Add(ModelBuilder.Raw(PlaneRole.UserMask, [255]));
        return layer;
    }
}
