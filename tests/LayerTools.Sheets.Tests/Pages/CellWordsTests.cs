using LayerTools.Model;
using LayerTools.Sheets.Pages;
using LayerTools.Sheets.Parts;
using LayerTools.Tests.Support;

namespace LayerTools.Sheets.Tests.Pages;

public class CellWordsTests
{
    [Theory]
    [InlineData(Mark.None, "no mark")]
    [InlineData(Mark.Green, "green mark")]
    [InlineData((Mark)9, "mark 9")]
    public void Marks_are_words(Mark mark, string words)
    {
        var part = ModelBuilder.Pixel("Brow L", mark: mark);
        ModelBuilder.File(part);
        Assert.Equal(words, CellWords.State(part));
    }

    [Fact]
    public void Every_named_mark_has_a_colour_of_its_own()
    {
        var marks = Enum.GetValues<Mark>().Where(mark => mark != Mark.None).ToList();
        Assert.Equal(marks.Count, marks.Select(CellWords.GetColor).Where(color => color is not null).Distinct().Count());
        Assert.Null(CellWords.GetColor(Mark.None));
        Assert.Null(CellWords.GetColor((Mark)9));
    }

    [Fact]
    public void Hidden_parts_say_so_and_why()
    {
        var own = ModelBuilder.Pixel("Sketch");
        own.Visible = false;
        var inside = ModelBuilder.Pixel("Arm L");
        var group = ModelBuilder.Group("Outfit 2", inside);
        group.Visible = false;
        ModelBuilder.File(own, group);
        Assert.Equal("no mark \u00B7 hidden", CellWords.State(own));
        Assert.Equal("no mark \u00B7 in a hidden group", CellWords.State(inside));
    }

    [Fact]
    public void Kinds_other_than_pixels_are_told()
    {
        var part = ModelBuilder.Other(LayerKind.Text, "Note");
        ModelBuilder.File(part);
        Assert.Equal("no mark \u00B7 text", CellWords.State(part));
    }

    [Fact]
    public void A_vector_mask_that_is_no_samples_is_told()
    {
        var part = ModelBuilder.Pixel("Arm L");
        part.Detail = new StubLayerDetail { Uses = LayerFeatures.VectorMask };
        ModelBuilder.File(part);
        Assert.Equal("no mark \u00B7 vector mask not drawn", CellWords.State(part));
        part.Mask = new LayerMask { Flags = LayerMask.RenderedFlag };
        part.Planes.Add(ModelBuilder.Raw(PlaneRole.UserMask, []));
        Assert.Equal("no mark", CellWords.State(part));
    }

    [Fact]
    public void Shapes_kept_as_data_only_are_not_called_empty()
    {
        var shape = ModelBuilder.Other(LayerKind.Shape, "Badge");
        var file = ModelBuilder.File("hero.psd", 100, 60, shape, ModelBuilder.Pixel("Layer 37", Bounds.Empty));
        Assert.Equal("no pixels stored", CellWords.Absence(shape));
        Assert.EndsWith("2 parts \u00B7 1 empty \u00B7 1 without stored pixels", Count(file, [.. file.GetLayers()], 2), StringComparison.Ordinal);
    }

    [Fact]
    public void The_header_counts_what_is_special()
    {
        var hidden = ModelBuilder.Pixel("Sketch");
        hidden.Visible = false;
        var empty = ModelBuilder.Pixel("Layer 37", Bounds.Empty);
        var file = ModelBuilder.File("hero.psd", 5000, 6000, hidden, empty, ModelBuilder.Pixel("Nose"));
        Assert.Equal("3 parts \u00B7 1 hidden \u00B7 1 empty", Count(file, [.. file.GetLayers()], 3));
        Assert.Equal("1 of 3 parts", Count(file, [file.Find("Nose")], 3));
        Assert.Equal("1 part", Count(file, [file.Find("Nose")], 1));
    }

    [Fact]
    public void A_part_without_a_name_says_so()
    {
        var part = ModelBuilder.Pixel(string.Empty);
        ModelBuilder.File(part);
        Assert.Equal("(no name)", CellWords.Name(part));
    }

    [Fact]
    public void What_is_not_plain_is_told()
    {
        var part = ModelBuilder.Pixel("Shade");
        (part.BlendMode, part.OpacityByte, part.Clipped) = (BlendMode.ColorBurn, 102, true);
        var group = ModelBuilder.Group("Head");
        group.BlendMode = BlendMode.Normal;
        ModelBuilder.File(part, group);
        Assert.Equal("no mark \u00B7 color burn \u00B7 opacity 40\u00A0% \u00B7 clipped", CellWords.State(part));
        Assert.Equal("no mark \u00B7 isolated", CellWords.State(group));
    }

    private static string Count(LayerFile file, IReadOnlyList<Layer> parts, int partsInFile)
    {
        var progress = new ProgressReader(file);
        return CellWords.Count(parts, partsInFile, [.. parts.Select(progress.Read)]);
    }
}
