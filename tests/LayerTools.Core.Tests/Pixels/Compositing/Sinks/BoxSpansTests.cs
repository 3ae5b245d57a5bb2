using LayerTools.Pixels.Compositing;
using LayerTools.Pixels.Compositing.Sinks;
using Xunit;

namespace LayerTools.Tests.Pixels.Compositing.Sinks;

public class BoxSpansTests
{
    [Theory]
    [InlineData(4, 2, new[] { 1f, 3, 5, 7 }, new[] { 2f, 6 })]
    [InlineData(3, 2, new[] { 3f, 6, 9 }, new[] { 4f, 8 })]
    [InlineData(5, 1, new[] { 1f, 2, 3, 4, 5 }, new[] { 3f })]
    [InlineData(3, 3, new[] { 1f, 2, 3 }, new[] { 1f, 2, 3 })]
    public void A_pixel_is_the_mean_of_what_it_covers(int sourceLength, int resultLength, float[] source, float[] expected)
    {
        var result = new float[resultLength];

        new BoxSpans(sourceLength, resultLength).Average(source, result);

        for (var i = 0; i < expected.Length; i++) Assert.Equal(expected[i], result[i], 5);
    }

    [Theory]
    [InlineData(6000, 160)]
    [InlineData(5000, 133)]
    [InlineData(97, 96)]
    [InlineData(1, 1)]
    [InlineData(300_000, 7)]
    public void Weights_of_each_pixel_add_up_to_one_and_each_source_pixel_is_used_up(int sourceLength, int resultLength)
    {
        var spans = new BoxSpans(sourceLength, resultLength);
        var result = new float[resultLength];

        spans.Average(Enumerable.Repeat(1f, sourceLength).ToArray(), result);

        Assert.All(result, value => Assert.Equal(1f, value, 4));
        var row = 0;
        for (var i = 0; i < resultLength; i++)
        {
            var sum = 0.0;
            for (var done = false; !done; row++)
            {
                sum += spans.GetWeight(row, i);
                done = spans.IsLast(row, i);
            }

            if (i + 1 < resultLength && spans.GetWeight(row - 1, i + 1) > 0) row--;
            Assert.Equal(1, sum, 4);
        }

        Assert.Equal(sourceLength, row);
    }
}
