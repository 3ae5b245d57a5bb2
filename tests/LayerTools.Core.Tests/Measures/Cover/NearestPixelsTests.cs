using CsCheck;
using LayerTools.Measures.Cover;
using LayerTools.Measures.Survey;
using Xunit;

namespace LayerTools.Tests.Measures.Cover;

public class NearestPixelsTests
{
    private static readonly Gen<(int Width, int Height, int Percent, int Seed)> Windows = Gen.Select(Gen.Int[1, 90], Gen.Int[1, 16], Gen.Int[0, 100], Gen.Int);

    [Fact]
    public void Finds_the_pixel_that_brute_force_finds() => Windows.Sample((width, height, percent, seed) =>
    {
        var random = new Random(seed);
        var members = Enumerable.Range(0, width * height).Where(_ => random.Next(100) < percent * percent / 100).ToList();
        var nearest = Solve(width, height, members);
        for (var y = 0; y < height; y++)
        {
            var columns = nearest.SolveRow(y);
            for (var x = 0; x < width; x++)
            {
                var expected = members.Count == 0 ? -1 : members.Min(member => (Squared(member % width, member / width, x, y) * width) + (member % width));
                var found = columns[x] < 0 ? -1 : (Squared(columns[x], nearest.RowAt(columns[x], y), x, y) * width) + columns[x];
                Assert.Equal(expected, found);
                if (found >= 0) Assert.Contains((nearest.RowAt(columns[x], y) * width) + columns[x], members);
            }
        }
    });

    [Fact]
    public void Of_equally_near_ones_takes_the_left_then_the_upper_one()
    {
        var nearest = Solve(5, 5, [2, 10, 14, 22]);
        Assert.Equal(0, nearest.SolveRow(2)[2]);
        nearest = Solve(5, 5, [2, 22]);
        Assert.Equal(2, nearest.SolveRow(2)[2]);
        Assert.Equal(0, nearest.RowAt(2, 2));
    }

    [Fact]
    public void Keeps_nothing_of_the_window_before()
    {
        var nearest = Solve(70, 9, Enumerable.Range(0, 630));
        Fill(nearest, 3, 2, []);
        Assert.Equal([-1, -1, -1], nearest.SolveRow(1).ToArray());
    }

    private static NearestPixels Solve(int width, int height, IEnumerable<int> members)
    {
        var nearest = new NearestPixels();
        Fill(nearest, width, height, members);
        return nearest;
    }

    private static void Fill(NearestPixels nearest, int width, int height, IEnumerable<int> members)
    {
        var rows = members.ToLookup(member => member / width, member => member % width);
        nearest.Begin(width, height);
        for (var y = 0; y < height; y++)
        {
            var words = new ulong[WordBits.GetWordCount(width)];
            foreach (var x in rows[y]) words[x >> 6] |= 1UL << (x & 63);
            nearest.AddRow(y, words);
        }

        nearest.EndColumns();
    }

    private static int Squared(int x1, int y1, int x2, int y2) => ((x1 - x2) * (x1 - x2)) + ((y1 - y2) * (y1 - y2));
}
