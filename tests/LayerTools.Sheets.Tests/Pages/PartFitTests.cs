using CsCheck;
using LayerTools.Model;
using LayerTools.Sheets.Pages;

namespace LayerTools.Sheets.Tests.Pages;

public class PartFitTests
{
    [Theory]
    [InlineData(100, 50, 288, 100, 50, "100 %")]
    [InlineData(288, 288, 288, 288, 288, "100 %")]
    [InlineData(576, 288, 288, 288, 144, "50 %")]
    [InlineData(5000, 6000, 288, 240, 288, "4.8 %")]
    [InlineData(289, 10, 288, 288, 10, "99 %")]
    [InlineData(30000, 1, 64, 64, 1, "0.2 %")]
    [InlineData(300000, 300000, 64, 64, 64, "less than 0.1 %")]
    [InlineData(1, 3000, 300, 1, 300, "10 %")]
    public void Parts_shrink_to_fit_and_never_grow(int width, int height, int side, int shownWidth, int shownHeight, string percent)
    {
        var fit = PartFit.Into(Bounds.FromSize(-7, 9, width, height), side);
        Assert.Equal((shownWidth, shownHeight, percent), (fit.Width, fit.Height, fit.Percent));
    }

    [Fact]
    public void Any_part_is_whole_and_undistorted() => Gen.Select(Gen.Int[1, 300_000], Gen.Int[1, 300_000], Gen.Int[40, 2000]).Sample((width, height, side) =>
    {
        var fit = PartFit.Into(Bounds.FromSize(0, 0, width, height), side);
        Assert.InRange(fit.Width, 1, Math.Min(width, side));
        Assert.InRange(fit.Height, 1, Math.Min(height, side));
        Assert.InRange(fit.Width - width * fit.Scale, -0.5000001, 1);
        Assert.InRange(fit.Height - height * fit.Scale, -0.5000001, 1);
    });
}
