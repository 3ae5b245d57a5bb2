using LayerTools.Measures.Symmetry;
using LayerTools.Pixels;
using LayerTools.Pixels.Colors;
using Xunit;

namespace LayerTools.Tests.Measures.Symmetry;

public sealed class ColorMirrorTests
{
    [Fact]
    public void Large_parts_are_sampled_and_come_close_to_a_look_at_each_pixel()
    {
        // 900 x 900 px: more than are looked at one by one. Both halves are noise, so that no pattern helps.
        var random = new Random(7);
        var raster = new Raster(900, 900);
        random.NextBytes(raster.Pixels);
        double sum = 0, weights = 0;
        for (var y = 0; y < 900; y++)
        {
            for (var x = 0; x < 900; x++)
            {
                var one = raster.Row(y).Slice(4 * x, 4);
                var two = raster.Row(y).Slice(4 * (899 - x), 4);
                double weight = Math.Min(one[3], two[3]);
                sum += weight * Ciede2000.Measure(CieLab.FromSrgb(one[0], one[1], one[2]), CieLab.FromSrgb(two[0], two[1], two[2]));
                weights += weight;
            }
        }

        var part = new PaintedPart(raster, 0, 0);
        Assert.Equal(sum / weights, ColorMirror.Measure(part, part, 900)!.Value, 0.1);
    }

    [Fact]
    public void Parts_that_share_no_pixel_have_no_difference()
    {
        var raster = new Raster(3, 3);
        raster.Pixels.AsSpan().Fill(200);
        var part = new PaintedPart(raster, 10, 0);
        Assert.Null(ColorMirror.Measure(part, part, 100));
    }

    [Fact]
    public void A_difference_that_is_remembered_is_the_same()
    {
        var pairs = new ColorPairs();
        byte[] one = [10, 200, 30], two = [60, 20, 90];
        var first = pairs.Measure(one, two);
        Assert.Equal(first, pairs.Measure(one, two));
        Assert.Equal(first, pairs.Measure(two, one), 1e-4f);
        Assert.Equal(0, pairs.Measure(one, one));
        Assert.Equal(0, pairs.Measure(new byte[3], new byte[3]));
        Assert.True(pairs.Measure(new byte[3], [0, 0, 1]) > 0);
    }
}
