using CsCheck;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Sheets.Pages;
using LayerTools.Sheets.Parts;
using LayerTools.Sheets.Tests.Support;
using LayerTools.Tests.Support;

namespace LayerTools.Sheets.Tests.Pages;

public class PageComposerTests
{
    private static readonly FakeRuler Ruler = new();
    private static readonly SheetHeading Heading = new("hero.psd", "facts " + new string('x', 300), "notes " + new string('x', 300));

    [Fact]
    public void All_text_can_be_read_on_any_background() => Gen.Int[0, 0xFFFFFF].Sample(color =>
        AssertReadable(SheetBackground.Parse(FormattableString.Invariant($"#{color:x6}"))));

    [Fact]
    public void All_text_can_be_read_on_the_named_backgrounds_and_on_greys()
    {
        AssertReadable(SheetBackground.Grey);
        AssertReadable(SheetBackground.Checker);
        AssertReadable(SheetBackground.Halves);
        for (var value = 0; value < 256; value++) AssertReadable(SheetBackground.Parse(FormattableString.Invariant($"#{value:x2}{value:x2}{value:x2}")));
    }

    [Theory]
    [InlineData(64)]
    [InlineData(96)]
    [InlineData(199)]
    [InlineData(200)]
    [InlineData(320)]
    [InlineData(640)]
    public void Nothing_leaves_its_place_however_long_names_are(int cellSize)
    {
        var page = Compose(SheetBackground.Grey, cellSize);
        var paper = new Bounds(0, 0, page.Width, page.Height);
        Assert.All(page.Elements, element => Assert.Equal(element.Area, element.Area.Intersect(paper)));
        Assert.All(page.Elements.OfType<TextElement>(), text => Assert.True(Ruler.Measure(text.Text, text.Style) <= text.Area.Width, text.Text));
        var texts = page.Elements.OfType<TextElement>().ToList();
        for (var i = 0; i < texts.Count; i++)
        {
            // The title may run above "page n of m", which stands in the line below.
            for (var j = i + 1; j < texts.Count; j++) Assert.True(texts[i].Area.Intersect(texts[j].Area).IsEmpty, $"'{texts[i].Text}' and '{texts[j].Text}'");
        }
    }

    [Fact]
    public void A_cell_tells_name_path_size_scale_and_mark_in_words()
    {
        var words = Compose(SheetBackground.Grey, 640).Elements.OfType<TextElement>().Select(text => text.Text).ToList();
        Assert.Contains("Iris L", words);
        Assert.Contains("Head/Eye L/Iris L", words);
        Assert.Contains("400 \u00D7 300 px \u00B7 at 100 %", words);
        Assert.Contains("done\u00A0\u00B7 green mark", words);
        Assert.Contains("hero.psd", words);
        Assert.Contains("page 1 of 1", words);
    }

    [Fact]
    public void Absent_pictures_are_told_in_words()
    {
        var words = Compose(SheetBackground.Grey, 640).Elements.OfType<TextElement>().Select(text => text.Text).ToList();
        Assert.Contains("empty", words);
        Assert.Contains("nothing visible", words);
        Assert.Contains("cannot be read: The channel is cut short.", words);
        Assert.Contains("50 \u00D7 60 px \u00B7 cannot be read", words);
    }

    [Fact]
    public void A_grey_part_on_grey_is_framed_and_told()
    {
        var part = ModelBuilder.Pixel("Backdrop", Bounds.FromSize(0, 0, 40, 50));
        ModelBuilder.File(part);
        var picture = new Raster(40, 50);
        for (var i = 0; i < picture.Pixels.Length; i++) picture.Pixels[i] = (byte)(i % 4 == 3 ? 255 : 0x78);
        PageCell[] cells = [new(Subject(part), new PartFit(40, 50, 1), picture, null)];
        Assert.Contains(ComposeOn(SheetBackground.Grey), element => element is FrameElement { Area: { Width: 40, Height: 50 } });
        Assert.Contains(ComposeOn(SheetBackground.Grey), element => element is TextElement { Text: "same colour as the background" });
        Assert.DoesNotContain(ComposeOn(SheetBackground.Parse("#7b7878")), element => element is TextElement { Text: "same colour as the background" });
        Assert.DoesNotContain(ComposeOn(SheetBackground.Checker), element => element is TextElement { Text: "same colour as the background" });

        IReadOnlyList<PageElement> ComposeOn(SheetBackground background) =>
            new PageComposer(SheetGrid.Plan(1, new SheetOptions(), "sheet.png"), new SheetOptions { Background = background }, Ruler).Compose(0, Heading, cells).Elements;
    }

    [Fact]
    public void Pictures_stand_in_the_middle_of_their_tile()
    {
        var page = Compose(SheetBackground.Grey, 640);
        var tile = page.Elements.OfType<FillElement>().First().Area;
        var picture = page.Elements.OfType<PictureElement>().First().Area;
        Assert.Equal(picture.Left - tile.Left, tile.Right - picture.Right);
        Assert.Equal(picture.Top - tile.Top, tile.Bottom - picture.Bottom);
    }

    [Fact]
    public void Words_in_a_tile_stand_on_one_colour()
    {
        var page = Compose(SheetBackground.Checker, 640);
        Assert.Single(page.Elements.OfType<CheckerElement>());
        Assert.Equal(3, page.Elements.OfType<FillElement>().Count());
    }

    [Fact]
    public void A_sheet_without_parts_says_so()
    {
        var grid = SheetGrid.Plan(0, new SheetOptions(), "sheet.png");
        var page = new PageComposer(grid, new SheetOptions(), Ruler).Compose(0, Heading, []);
        Assert.Contains(page.Elements.OfType<TextElement>(), text => text.Text == "There is no part that carries pixels.");
    }

    private static void AssertReadable(SheetBackground background)
    {
        foreach (var text in Compose(background, 320).Elements.OfType<TextElement>())
        {
            Assert.True(Contrast.Ratio(text.Color, text.Background) >= Contrast.Minimum, $"'{text.Text}', {text.Color} on {text.Background}");
        }
    }

    private static SheetPage Compose(SheetBackground background, int cellSize)
    {
        var iris = ModelBuilder.Pixel("Iris L", Bounds.FromSize(0, 0, 400, 300), mark: Mark.Green);
        var empty = ModelBuilder.Pixel("Layer 37", Bounds.Empty);
        var blank = ModelBuilder.Pixel("Layer 38", Bounds.FromSize(0, 0, 5, 6));
        var broken = ModelBuilder.Pixel(new string('W', 255), Bounds.FromSize(0, 0, 50, 60));
        ModelBuilder.File(ModelBuilder.Group("Head", ModelBuilder.Group("Eye L", iris)), empty, blank, broken);
        var options = new SheetOptions { CellSize = cellSize, Background = background };
        var fit = PartFit.Into(iris.Bounds, cellSize - 2 * SheetMetrics.GetInset(cellSize));
        var other = new PartFit(5, 6, 1);
        PageCell[] cells =
        [
            new(Subject(iris), fit, Paint(fit), null),
            new(Subject(empty), null, null, null),
            new(Subject(blank), other, null, null),
            new(Subject(broken), other, null, "The channel is cut short."),
        ];
        return new PageComposer(SheetGrid.Plan(cells.Length, options, "sheet.png"), options, Ruler).Compose(0, Heading, cells);
    }

    private static SheetSubject Subject(Layer part) => SheetSubject.ForPart(part, new ProgressReader(part.GetFile()!));

    private static Raster Paint(PartFit fit)
    {
        var picture = new Raster(fit.Width, fit.Height);
        for (var i = 0; i < picture.Pixels.Length; i++) picture.Pixels[i] = (byte)(i % 4 == 3 ? 255 : i);
        return picture;
    }
}
