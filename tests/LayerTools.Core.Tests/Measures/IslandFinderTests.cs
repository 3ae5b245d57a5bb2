using LayerTools.Measures;
using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Measures;

/// <summary>Parts painted in several places. Each figure is drawn with a sign for each pixel: '#' opaque, '+' faint, '.' nothing.</summary>
public class IslandFinderTests
{
    [Theory]
    [InlineData("#.|.#", 0)]
    [InlineData(".#|#.", 0)]
    [InlineData("#.#|###", 0)]
    [InlineData("#.#.#|.#.#.", 0)]
    [InlineData("###|#.#|###", 0)]
    [InlineData("#.#", 2)]
    [InlineData("#|.|#", 2)]
    [InlineData("#..|..#", 2)]
    [InlineData("#+#", 0)]
    [InlineData("#.#.#|#.#.#|#.###", 2)]
    [InlineData("..#|#.#|#.#|###", 0)]
    public void Pixels_belong_together_at_sides_and_corners(string picture, int expected)
    {
        var found = Find(picture).ToList();

        Assert.Equal(expected, found.Count == 0 ? 0 : found[0].Count);
    }

    [Fact]
    public void Faint_pixels_can_count_as_unpainted()
    {
        Assert.Empty(Find("#+#"));
        Assert.Equal(2, Find("#+#", threshold: 10).Single().Count);
        Assert.Empty(Find("#.+", threshold: 10));
    }

    [Fact]
    public void The_largest_island_comes_first_with_its_box_on_the_canvas()
    {
        var part = Find("#..##|...##|...#.").Single();

        Assert.Equal([new Bounds(13, 10, 15, 13), new Bounds(10, 10, 11, 11)], part.Boxes);
        Assert.Equal([5, 1], part.Areas);
        Assert.Equal(1, part.SmallestArea);
        Assert.Equal(("Eye", 1), (part.LayerPath, part.LayerNumber));
    }

    [Fact]
    public void A_file_is_not_changed()
    {
        var file = File(Draw("#.#"), Group("Head", Pixel("Face")));

        Assert.Single(new IslandFinder().Find(file, [.. file.GetLayers()], TestContext.Current.CancellationToken));

        Assert.Empty(file.Changes);
        Assert.Equal("Eye Head(Face)", file.Sketch());
    }

    private static IEnumerable<PartIslands> Find(string picture, int threshold = 0)
    {
        var file = File(Draw(picture));
        return new IslandFinder(threshold).Find(file, [.. file.GetLayers()], TestContext.Current.CancellationToken);
    }

    private static Layer Draw(string picture)
    {
        var rows = picture.Split('|');
        var alpha = rows.SelectMany(row => row).Select(sign => sign switch { '#' => (byte)255, '+' => (byte)8, _ => (byte)0 }).ToArray();
        return Pixel("Eye", Bounds.FromSize(10, 10, rows[0].Length, rows.Length), alpha);
    }
}
