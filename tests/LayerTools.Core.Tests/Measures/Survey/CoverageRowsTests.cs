using LayerTools.Formats;
using LayerTools.Measures.Survey;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Measures.Survey;

public class CoverageRowsTests
{
    [Fact]
    public void Small_parts_take_little_memory()
    {
        var memory = new SurveyMemory(ModelBuilder.File(), new ReadLimits { MemoryMegabytes = 1 });

        // What is not complete yet keeps all that it has taken.
        var parts = Enumerable.Range(0, 100).Select(_ => new CoverageRows(memory)).ToList();
        foreach (var part in parts) part.Add(0, 0, [1UL]);

        Assert.All(parts, part => Assert.True(part.Complete()[0, 0]));
    }

    [Fact]
    public void Rows_of_large_parts_are_kept_in_chunks_that_grow()
    {
        var rows = new CoverageRows(new SurveyMemory(ModelBuilder.File(), new ReadLimits()));
        var wide = Enumerable.Repeat(ulong.MaxValue, 700).ToArray();
        for (var y = 0; y < 400; y++) rows.Add(y, 64 * (y % 2), wide);

        var map = rows.Complete();

        Assert.Equal((0, 0, 701 * 64, 400), (map.Bounds.Left, map.Bounds.Top, map.Bounds.Right, map.Bounds.Bottom));
        Assert.All(Enumerable.Range(0, 400), y => Assert.Equal((y % 2 == 0, y % 2 == 1), (map[63, y], map[700 * 64, y])));
    }
}
