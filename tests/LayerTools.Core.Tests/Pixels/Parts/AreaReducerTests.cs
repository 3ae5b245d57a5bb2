using CsCheck;
using LayerTools.Pixels;
using LayerTools.Pixels.Parts;
using Xunit;

namespace LayerTools.Core.Tests.Pixels.Parts;

public class AreaReducerTests
{
    [Fact]
    public void At_full_size_every_visible_pixel_stays_as_it_is() => Gen.Byte.Array[4 * 7 * 5].Sample(pixels =>
    {
        var result = Reduce(7, 5, 7, 5, (x, y) => (pixels[Index(x, y)], pixels[Index(x, y) + 1], pixels[Index(x, y) + 2], pixels[Index(x, y) + 3]));
        for (var i = 0; i < pixels.Length; i += 4)
        {
            Assert.Equal(pixels[i + 3], result.Pixels[i + 3]);
            if (pixels[i + 3] != 0) Assert.Equal(pixels.AsSpan(i, 3), result.Pixels.AsSpan(i, 3));
        }

        static int Index(int x, int y) => 4 * (7 * y + x);
    });

    [Fact]
    public void White_cut_out_of_black_stays_white()
    {
        var result = Reduce(64, 64, 9, 9, (x, y) => Square(x - 32) + Square(y - 32) < 600 ? White : TransparentBlack);
        AssertColorWhereVisible(result, 255);
        Assert.Contains(result.Pixels.Where((_, i) => i % 4 == 3), alpha => alpha is > 0 and < 255);
    }

    [Fact]
    public void Black_cut_out_of_white_stays_black()
    {
        var result = Reduce(64, 64, 9, 9, (x, y) => Square(x - 32) + Square(y - 32) < 600 ? Black : TransparentWhite);
        AssertColorWhereVisible(result, 0);
    }

    [Fact]
    public void Half_black_half_white_is_half_the_light()
    {
        var result = Reduce(8, 8, 4, 4, (x, _) => x % 2 == 0 ? White : Black);
        Assert.All(Enumerable.Range(0, 16), i => Assert.Equal([188, 188, 188, 255], result.Pixels[(4 * i)..(4 * i + 4)]));
    }

    [Fact]
    public void Opacity_is_the_plain_mean_and_weighs_colour()
    {
        // Two pixels: white at full opacity, black at a third of it. Light is (255 x 1 + 85 x 0) / 340 = 3/4, encoded as 225.
        var result = Reduce(2, 1, 1, 1, (x, _) => x == 0 ? White : FaintBlack);
        Assert.Equal([225, 225, 225, 170], result.Pixels);
    }

    [Fact]
    public void A_ratio_that_is_no_whole_number_shares_pixels_by_area()
    {
        // Three columns become two: each takes one and a half.
        var result = Reduce(3, 1, 2, 1, (x, _) => x == 1 ? TransparentBlack : White);
        Assert.Equal([255, 255, 255, 170, 255, 255, 255, 170], result.Pixels);
        result = Reduce(3, 1, 2, 1, (x, _) => x == 0 ? White : TransparentBlack);
        Assert.Equal([255, 255, 255, 170, 0, 0, 0, 0], result.Pixels);
    }

    [Fact]
    public void Rows_are_shared_like_columns() => Gen.Select(Gen.Int[1, 40], Gen.Int[1, 40], Gen.Int[1, 40], Gen.Int[1, 40], Gen.Int[0, 1000]).Sample((w, h, dw, dh, seed) =>
    {
        (dw, dh) = (Math.Min(dw, w), Math.Min(dh, h));
        var random = new Random(seed);
        var pixels = new (byte, byte, byte, byte)[w, h];
        for (var x = 0; x < w; x++)
        {
            for (var y = 0; y < h; y++) pixels[x, y] = ((byte)random.Next(256), (byte)random.Next(256), (byte)random.Next(256), (byte)random.Next(256));
        }

        var upright = Reduce(w, h, dw, dh, (x, y) => pixels[x, y]);
        var turned = Reduce(h, w, dh, dw, (x, y) => pixels[y, x]);
        for (var x = 0; x < dw; x++)
        {
            for (var y = 0; y < dh; y++) Assert.Equal(upright.Row(y).Slice(4 * x, 4).ToArray(), turned.Row(x).Slice(4 * y, 4).ToArray());
        }
    });

    [Fact]
    public void Sums_of_the_largest_layer_do_not_overflow()
    {
        const int Side = 300_000;
        var reducer = new AreaReducer(Side, Side, 1, 1);
        var full = Enumerable.Repeat((byte)255, Side).ToArray();
        for (var y = 0; y < 3; y++) reducer.AddRow(full, full, full, full);
        for (var y = 3; y < Side; y++) reducer.AddBlankRow();
        Assert.Equal([255, 255, 255, 0], reducer.Finish().Pixels);
        Assert.True(65535UL * 255 * Side * Side < long.MaxValue);
    }

    [Fact]
    public void Larger_results_and_missing_rows_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new AreaReducer(2, 2, 3, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => new AreaReducer(2, 2, 2, 0));
        var reducer = new AreaReducer(1, 2, 1, 1);
        reducer.AddBlankRow();
        Assert.Throws<InvalidOperationException>(reducer.Finish);
        reducer.AddBlankRow();
        reducer.Finish();
        Assert.Throws<InvalidOperationException>(reducer.AddBlankRow);
    }

    private static (byte R, byte G, byte B, byte A) White => (255, 255, 255, 255);

    private static (byte R, byte G, byte B, byte A) Black => (0, 0, 0, 255);

    private static (byte R, byte G, byte B, byte A) TransparentBlack => (0, 0, 0, 0);

    private static (byte R, byte G, byte B, byte A) TransparentWhite => (255, 255, 255, 0);

    private static (byte R, byte G, byte B, byte A) FaintBlack => (0, 0, 0, 85);

    private static int Square(int value) => value * value;

    private static void AssertColorWhereVisible(Raster result, byte expected)
    {
        for (var i = 0; i < result.Pixels.Length; i += 4)
        {
            if (result.Pixels[i + 3] != 0) Assert.Equal([expected, expected, expected], result.Pixels[i..(i + 3)]);
        }
    }

    private static Raster Reduce(int width, int height, int toWidth, int toHeight, Func<int, int, (byte R, byte G, byte B, byte A)> pixel)
    {
        var reducer = new AreaReducer(width, height, toWidth, toHeight);
        for (var y = 0; y < height; y++)
        {
            var row = Enumerable.Range(0, width).Select(x => pixel(x, y)).ToList();
            reducer.AddRow([.. row.Select(p => p.R)], [.. row.Select(p => p.G)], [.. row.Select(p => p.B)], [.. row.Select(p => p.A)]);
        }

        return reducer.Finish();
    }
}
