using CsCheck;
using LayerTools.Model;
using LayerTools.Sheets.Pages;

namespace LayerTools.Sheets.Tests.Pages;

public class SheetGridTests
{
    private static readonly Gen<(int Count, int Cell)> Plans = Gen.Select(Gen.Int[0, 500], Gen.Int[SheetOptions.SmallestCell, SheetOptions.LargestCell]);

    [Fact]
    public void Pages_stay_below_the_limits_and_hold_every_part_once() => Plans.Sample((count, cell) =>
    {
        var grid = SheetGrid.Plan(count, new SheetOptions { CellSize = cell }, "sheet.png");
        var shown = 0;
        for (var page = 0; page < grid.PageCount; page++)
        {
            Assert.Equal(shown, grid.GetFirst(page));
            Assert.True(grid.GetCount(page) > 0 || count == 0);
            Assert.True((long)grid.PageWidth * grid.GetPageHeight(page) <= SheetMetrics.LargestArea);
            Assert.True(grid.GetPageHeight(page) <= SheetMetrics.LargestHeight);
            shown += grid.GetCount(page);
        }

        Assert.Equal(count, shown);
    });

    [Fact]
    public void Cells_and_labels_stay_apart_and_inside_the_margins() => Plans.Where(plan => plan.Count > 0).Sample((count, cell) =>
    {
        var grid = SheetGrid.Plan(count, new SheetOptions { CellSize = cell }, "sheet.png");
        var inside = new Bounds(SheetMetrics.Margin, SheetMetrics.Margin + SheetStyle.Screen.HeaderHeight, grid.PageWidth - SheetMetrics.Margin, grid.GetPageHeight(0) - SheetMetrics.Margin);
        var boxes = Enumerable.Range(0, grid.GetCount(0)).SelectMany(i => new[] { grid.GetTile(i), grid.GetLabel(i) }).ToList();
        Assert.All(boxes, box => Assert.Equal(box, box.Intersect(inside)));
        for (var i = 1; i < boxes.Count; i++) Assert.True(boxes[i].Intersect(boxes[i - 1]).IsEmpty);
    });

    [Theory]
    [InlineData(110, 320, 5)]
    [InlineData(6, 320, 3)]
    [InlineData(1, 320, 1)]
    [InlineData(0, 320, 1)]
    [InlineData(3, 2048, 1)]
    public void Columns_fit_a_screen_and_rows_are_even(int count, int cell, int columns) =>
        Assert.Equal(columns, SheetGrid.Plan(count, new SheetOptions { CellSize = cell }, "sheet.png").Columns);

    [Fact]
    public void The_last_page_is_no_leftover()
    {
        var grid = SheetGrid.Plan(110, new SheetOptions(), "sheet.png");
        Assert.Equal(3, grid.PageCount);
        Assert.Equal([40, 40, 30], Enumerable.Range(0, 3).Select(grid.GetCount));
    }

    [Fact]
    public void Asked_columns_are_kept_but_never_more_than_parts()
    {
        Assert.Equal(8, SheetGrid.Plan(110, new SheetOptions { Columns = 8 }, "sheet.png").Columns);
        Assert.Equal(3, SheetGrid.Plan(3, new SheetOptions { Columns = 8 }, "sheet.png").Columns);
        Assert.Equal(1, SheetGrid.Plan(0, new SheetOptions { Columns = 8 }, "sheet.png").Columns);
    }

    [Fact]
    public void Too_many_columns_are_refused_with_the_most_that_fit()
    {
        var error = Assert.Throws<SheetException>(() => SheetGrid.Plan(100, new SheetOptions { CellSize = 2048, Columns = 50 }, "sheet.png"));
        var most = int.Parse(error.Remedy.Split(' ')[3], System.Globalization.CultureInfo.InvariantCulture);
        var grid = SheetGrid.Plan(100, new SheetOptions { CellSize = 2048, Columns = most }, "sheet.png");
        Assert.True((long)grid.PageWidth * grid.GetPageHeight(0) <= SheetMetrics.LargestArea);
        Assert.Throws<SheetException>(() => SheetGrid.Plan(100, new SheetOptions { CellSize = 2048, Columns = most + 1 }, "sheet.png"));
    }
}
