using CsCheck;
using LayerTools.Measures.Cover;
using LayerTools.Measures.Survey;
using LayerTools.Model;
using Xunit;

namespace LayerTools.Tests.Measures.Cover;

public class CoverageBitsTests
{
    [Fact]
    public void Reads_rows_from_any_column() => Gen.Select(Gen.Int[-70, 70], Gen.Int[1, 200], Gen.Int[-300, 300], Gen.Int[1, 4], Gen.Int).Sample((left, width, from, count, seed) =>
    {
        var random = new Random(seed);
        var map = new CoverageMap(Bounds.FromSize(left, 5, width, 2));
        for (var x = left; x < left + width; x++)
        {
            if (random.Next(2) == 0) map.Cover(x, 6);
        }

        var words = Enumerable.Repeat(ulong.MaxValue, count).ToArray();
        CoverageBits.Read(map, 6, from, words);
        for (var i = 0; i < 64 * count; i++) Assert.Equal(map[from + i, 6], (words[i >> 6] >> (i & 63) & 1) != 0);
        CoverageBits.Read(map, 4, from, words);
        Assert.False(CoverageBits.Any(words));
    });

    [Theory]
    [InlineData(64, ulong.MaxValue)]
    [InlineData(1, 1UL)]
    [InlineData(63, ulong.MaxValue >> 1)]
    public void Clears_bits_behind_the_width(int width, ulong expected)
    {
        ulong[] words = [ulong.MaxValue];
        CoverageBits.Trim(words, width);
        Assert.Equal(expected, words[0]);
    }
}
