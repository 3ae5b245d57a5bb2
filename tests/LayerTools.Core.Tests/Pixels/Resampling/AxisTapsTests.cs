using CsCheck;
using LayerTools.Model;
using LayerTools.Pixels.Resampling;
using Xunit;

namespace LayerTools.Tests.Pixels.Resampling;

public class AxisTapsTests
{
    private static readonly Gen<ResampleFilter> AnyFilter = Gen.Enum<ResampleFilter>();

    [Fact]
    public void Half_the_size_by_area_is_the_mean_of_two()
    {
        var taps = AxisTaps.Create(ResampleFilter.Area, 10, 5, -2, 5);
        for (var i = -2; i < 5; i++)
        {
            Assert.Equal(2 * i, taps.StartOf(i));
            Assert.Equal([0.5f, 0.5f], taps.WeightsOf(i).ToArray());
        }
    }

    [Fact]
    public void Parts_of_pixels_count_by_their_share()
    {
        var taps = AxisTaps.Create(ResampleFilter.Area, 5, 2, 0, 2);
        Assert.Equal([0.4f, 0.4f, 0.2f], taps.WeightsOf(0).ToArray());
        Assert.Equal((2, 5), (taps.StartOf(1), taps.EndOf(1)));
        Assert.Equal([0.2f, 0.4f, 0.4f], taps.WeightsOf(1).ToArray());
    }

    // Keys 1981, 'Cubic convolution interpolation for digital image processing': the cubic with a = -0.5.
    [Fact]
    public void The_cubic_has_the_published_weights()
    {
        // Twice as large: the centre of new pixel 2 lies a quarter of an old pixel before that of old pixel 1.
        var larger = AxisTaps.Create(ResampleFilter.CatmullRom, 3, 6, 2, 3);
        Assert.Equal(-1, larger.StartOf(2));
        Assert.Equal([-0.0234375f, 0.2265625f, 0.8671875f, -0.0703125f], larger.WeightsOf(2).ToArray());

        // Half as large: the same cubic twice as wide, its weights halved.
        var smaller = AxisTaps.Create(ResampleFilter.CatmullRom, 8, 4, 2, 3);
        Assert.Equal((1, 9), (smaller.StartOf(2), smaller.EndOf(2)));
        Assert.Equal(smaller.WeightsOf(2).ToArray().Take(4), smaller.WeightsOf(2).ToArray().Skip(4).Reverse());
        Assert.Equal(0.8671875f / 2, smaller.WeightsOf(2)[3]);
    }

    [Fact]
    public void Weights_add_up_to_one() => Gen.Select(AnyFilter, Gen.Int[1, 900], Gen.Int[1, 900]).Sample((filter, oldSize, newSize) =>
    {
        var taps = AxisTaps.Create(filter, oldSize, newSize, -3, newSize + 3);
        for (var i = -3; i < newSize + 3; i++) Assert.Equal(1.0, taps.WeightsOf(i).ToArray().Sum(weight => (double)weight), 5);
    }, iter: 200);

    [Fact]
    public void Pixels_across_the_centre_line_have_the_same_weights_in_reverse() => Gen.Select(AnyFilter, Gen.Int[1, 900], Gen.Int[1, 900]).Sample((filter, oldSize, newSize) =>
    {
        var taps = AxisTaps.Create(filter, oldSize, newSize, -5, newSize + 5);
        for (var i = -5; i < newSize + 5; i++)
        {
            var across = newSize - 1 - i;
            Assert.Equal(oldSize - taps.EndOf(i), taps.StartOf(across));
            Assert.Equal(taps.WeightsOf(i).ToArray().Reverse(), taps.WeightsOf(across).ToArray());
        }
    }, iter: 200);
}
