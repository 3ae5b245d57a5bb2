using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Checks.Rules;

public class NotEightBitRgbTests : RuleTests
{
    private protected override IReadOnlyList<string?> BadPaths => [null];

    private protected override LayerFile CreateGood() => With(ColorMode.Rgb, 8);

    private protected override LayerFile CreateBad() => With(ColorMode.Rgb, 16);

    [Theory]
    [InlineData(ColorMode.Cmyk, 8, "CMYK, 8 bit")]
    [InlineData(ColorMode.Grayscale, 8, "Grayscale, 8 bit")]
    [InlineData(ColorMode.Rgb, 32, "RGB, 32 bit")]
    public void It_says_what_the_file_is(ColorMode mode, int depth, string words) => Assert.Equal(words, Assert.Single(Check(With(mode, depth))).Measured);

    private static LayerFile With(ColorMode mode, int depth)
    {
        var file = ModelBuilder.File();
        (file.ColorMode, file.BitDepth) = (mode, depth);
        return file;
    }
}
