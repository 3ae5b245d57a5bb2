using LayerTools.Measures.Symmetry;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Sheets.Pages;
using LayerTools.Sheets.Symmetry;
using LayerTools.Sheets.Tests.Support;
using LayerTools.Tests.Support;

namespace LayerTools.Sheets.Tests.Symmetry;

public sealed class SymmetryPageTests
{
    [Fact]
    public void The_legend_tells_figures_with_units()
    {
        var words = Read(Compose(5000, 1000, Figures(axis: 2497.3)));
        Assert.Contains("Coverage agrees by 80.63 %", words, StringComparison.Ordinal);
        Assert.Contains("4.4 ΔE00", words, StringComparison.Ordinal);
        Assert.Contains("1 px stands for 5 px", words, StringComparison.Ordinal);
        Assert.Contains("canvas axis, x = 2500 px", words, StringComparison.Ordinal);
        Assert.Contains("x = 2497.3 px, 2.7 px to the left", words, StringComparison.Ordinal);
        Assert.Contains("500 px of the canvas", words, StringComparison.Ordinal);
        Assert.DoesNotContain("leans", words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tilt_is_told_where_it_fits_clearly_better()
    {
        Assert.Contains("leans 3.5° to the right", Read(Compose(800, 800, Figures(402) with { Angle = 3.5, AngleIou = 95 })), StringComparison.Ordinal);
        Assert.DoesNotContain("leans", Read(Compose(800, 800, Figures(402) with { Angle = 3.5, AngleIou = 81 })), StringComparison.Ordinal);
    }

    [Fact]
    public void Words_stand_on_the_page_and_do_not_overlap()
    {
        var page = Compose(5000, 1000, Figures(2300));
        var areas = page.Elements.OfType<TextElement>().Select(text => text.Area).ToList();
        Assert.All(areas, area => Assert.True(area.Left >= 0 && area.Right <= page.Width && area.Bottom <= page.Height, area.ToString()));
        for (var i = 0; i < areas.Count; i++)
        {
            for (var j = i + 1; j < areas.Count; j++) Assert.True(areas[i].Intersect(areas[j]).IsEmpty, $"{areas[i]} and {areas[j]}");
        }
    }

    [Fact]
    public void The_scale_bar_is_as_long_as_it_says()
    {
        var page = Compose(5000, 1000, Figures(2500));
        var bar = page.Elements.OfType<FillElement>().MaxBy(fill => fill.Area.Width)!;
        Assert.Equal(500 / 5, bar.Area.Width);
    }

    [Fact]
    public void Both_axes_are_drawn_where_they_are_apart()
    {
        var picture = Compose(800, 800, Figures(300)).Elements.OfType<PictureElement>().MaxBy(element => element.Area.Area)!.Picture;
        Assert.Equal(SymmetryInk.Line.R, picture.Row(0)[4 * 400]);
        Assert.Equal(SymmetryInk.Line.R, picture.Row(0)[4 * 300]);
        Assert.Equal(byte.MaxValue, picture.Row(0)[4 * 350]);
    }

    private static LayerSymmetry Figures(double axis) => new()
    {
        Kind = SymmetryKind.Figure,
        LayerPath = string.Empty,
        LayerNumber = null,
        OppositePath = string.Empty,
        OppositeNumber = null,
        Iou = 80.63,
        BestIou = 80.7,
        ColorDifference = 4.4,
        Axis = axis,
        CanvasAxis = axis < 1000 ? 400 : 2500,
        FilePath = "hero.psd",
        Note = string.Empty,
    };

    private static SheetPage Compose(int canvas, int shown, LayerSymmetry figures) =>
        SymmetryPage.Compose(ModelBuilder.File("hero.psd", canvas, canvas), figures, new Raster(shown, shown), 1, new FakeRuler());

    private static string Read(SheetPage page) => string.Join(' ', page.Elements.OfType<TextElement>().Select(text => text.Text));
}
