using LayerTools.Pixels.Compositing;
using LayerTools.Pixels.Compositing.Masks;
using Xunit;

namespace LayerTools.Tests.Pixels.Compositing.Masks;

public class GaussianBlurTests
{
    /// <summary>An edge blurred by a Gaussian is the Gaussian's distribution function; its values are Φ(x), tabulated: Φ(0.5) = 0.6915, Φ(1) = 0.8413, Φ(1.5) = 0.9332.</summary>
    [Theory]
    [InlineData(2)]
    [InlineData(3.7)]
    [InlineData(10)]
    [InlineData(20)]
    public void An_edge_becomes_the_distribution_function(double sigma)
    {
        var reach = GaussianBlur.GetReach(sigma);
        var width = 3 * reach;
        var row = Enumerable.Range(0, width).Select(x => x < reach ? 0f : 1f).ToArray();

        var middle = GaussianBlur.Blur(Enumerable.Repeat(row, (2 * reach) + 1), width, (2 * reach) + 1, 0, width, 0f, sigma).AsSpan(reach * width, width);

        foreach (var (deviations, expected) in new[] { (0.5, 0.6915), (1, 0.8413), (1.5, 0.9332) })
        {
            var x = reach - 0.5 + (deviations * sigma);
            var near = (int)Math.Floor(x);
            var value = (middle[near] + ((middle[near + 1] - middle[near]) * (x - near))) / ushort.MaxValue;
            Assert.InRange(value, expected - 0.01, expected + 0.01);
        }
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(1)]
    [InlineData(2.6)]
    [InlineData(17.5)]
    public void The_variance_is_that_of_the_Gaussian(double sigma)
    {
        var reach = GaussianBlur.GetReach(sigma);
        var side = (2 * reach) + 1;
        var rows = Enumerable.Range(0, side).Select(y => Enumerable.Range(0, side).Select(x => y == reach ? 1f : 0f).ToArray());

        var blurred = GaussianBlur.Blur(rows, side, side, 0, side, 0f, sigma);

        var column = Enumerable.Range(0, side).Select(y => (double)blurred[(y * side) + reach]).ToArray();
        var variance = column.Select((value, y) => value * (y - reach) * (y - reach)).Sum() / column.Sum();
        Assert.InRange(variance, sigma * sigma * 0.98, sigma * sigma * 1.02);
    }

    [Fact]
    public void What_is_even_stays_even() =>
        Assert.All(GaussianBlur.Blur(Enumerable.Repeat(Enumerable.Repeat(1f, 9).ToArray(), 7), 9, 7, 2, 5, 1f, 3), value => Assert.Equal(ushort.MaxValue, value));
}
