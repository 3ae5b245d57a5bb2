using LayerTools.Measures.Symmetry;
using LayerTools.Pixels;
using LayerTools.Sheets.Pages;
using LayerTools.Sheets.Symmetry;

namespace LayerTools.Sheets.Tests.Symmetry;

public sealed class SymmetryMapTests
{
    private static readonly byte[] Red = [200, 40, 30, 255];
    private static readonly byte[] Nothing = [0, 0, 0, 0];

    [Fact]
    public void Pixels_are_told_by_coverage_first_and_then_by_colour()
    {
        var colors = new ColorPairs();
        Assert.Equal(SymmetryCell.Clear, SymmetryMap.Tell(Nothing, [9, 9, 9, 127], colors));
        Assert.Equal(SymmetryCell.Extra, SymmetryMap.Tell(Red, Nothing, colors));
        Assert.Equal(SymmetryCell.Missing, SymmetryMap.Tell(Nothing, Red, colors));
        Assert.Equal(SymmetryCell.Same, SymmetryMap.Tell(Red, Red, colors));
        Assert.Equal(SymmetryCell.Other, SymmetryMap.Tell(Red, [30, 40, 200, 128], colors));
        Assert.Equal([SymmetryCell.Same, SymmetryCell.Slight, SymmetryCell.Visible, SymmetryCell.Strong, SymmetryCell.Other],
            Enumerable.Range(0, 256).Select(grey => SymmetryMap.Tell([0, 0, 0, 255], [(byte)grey, (byte)grey, (byte)grey, 255], colors)).Distinct());
    }

    [Fact]
    public void Colours_get_darker_the_more_they_differ_and_coverage_is_hatched()
    {
        SymmetryCell[] plain = [SymmetryCell.Slight, SymmetryCell.Visible, SymmetryCell.Strong, SymmetryCell.Other];
        var light = Array.ConvertAll(plain, cell => Contrast.Luminance(Assert.Single(FindColors(cell))));
        Assert.True(light.Zip(light.Skip(1)).All(pair => pair.First > 1.5 * pair.Second), string.Join(' ', light));
        Assert.All([SymmetryCell.Extra, SymmetryCell.Missing], cell => Assert.Equal(2, FindColors(cell).Count));

        // In grey the two hatchings differ by how much ink they take.
        Assert.True(CountInk(SymmetryCell.Extra) > 2 * CountInk(SymmetryCell.Missing));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public void What_is_extra_on_one_side_is_missing_on_the_other(int zoom)
    {
        var figure = new Raster(6, 1);
        Red.CopyTo(figure.Row(0).Slice(4 * 1));
        var picture = SymmetryMap.Paint(figure, zoom);
        Assert.Equal((6 * zoom, zoom), (picture.Width, picture.Height));
        Assert.All(Enumerable.Range(0, 6 * zoom), x =>
        {
            var expected = (x / zoom) switch { 1 => SymmetryCell.Extra, 4 => SymmetryCell.Missing, _ => SymmetryCell.Clear };
            Assert.Equal(SymmetryInk.Choose(expected, default, x, 0), At(picture, x, 0));
        });
    }

    [Fact]
    public void Lines_are_dashed_and_stay_in_the_picture()
    {
        var picture = SymmetryMap.PaintPatch(SymmetryCell.Other, 10, 12);
        SymmetryMap.PaintLine(picture, 5, 4);
        Assert.Equal(SymmetryInk.Line, At(picture, 4, 0));
        Assert.Equal(SymmetryInk.Line, At(picture, 5, 3));
        Assert.Equal(Rgb.White, At(picture, 3, 0));
        Assert.NotEqual(SymmetryInk.Line, At(picture, 4, 4));
        SymmetryMap.PaintLine(picture, -3, 4);
        SymmetryMap.PaintLine(picture, 99, 4);
    }

    private static HashSet<Rgb> FindColors(SymmetryCell cell) => [.. Pixels(cell)];

    private static int CountInk(SymmetryCell cell)
    {
        var darkest = FindColors(cell).MinBy(Contrast.Luminance);
        return Pixels(cell).Count(color => color == darkest);
    }

    private static IEnumerable<Rgb> Pixels(SymmetryCell cell)
    {
        var patch = SymmetryMap.PaintPatch(cell, 32, 32);
        return Enumerable.Range(0, 32 * 32).Select(i => At(patch, i % 32, i / 32));
    }

    private static Rgb At(Raster picture, int x, int y) => new(picture.Row(y)[4 * x], picture.Row(y)[(4 * x) + 1], picture.Row(y)[(4 * x) + 2]);
}
