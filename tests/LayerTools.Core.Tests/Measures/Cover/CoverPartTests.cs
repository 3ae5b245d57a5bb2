using LayerTools.Measures.Cover;
using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Measures.Cover;

public class CoverPartTests
{
    private static readonly Bounds Whole = new(0, 0, 100, 60);

    [Fact]
    public void A_clipped_layer_is_no_part_and_covers_only_with_its_base()
    {
        var file = ModelBuilder.File(ModelBuilder.Pixel("Shade", Whole, clipped: true), ModelBuilder.Pixel("Arm", new Bounds(0, 0, 50, 60)), ModelBuilder.Pixel("Body", Whole));
        var cover = Measure(file);
        Assert.Equal(["Arm", "Body"], cover.Parts.Select(part => part.LayerPath));
        Assert.Equal(3000, cover.Parts[1].VisibleArea);
        Assert.Equal("Arm", Assert.Single(cover.Seams).Neighbour);
    }

    [Fact]
    public void Hidden_parts_cover_where_that_is_asked()
    {
        var file = ModelBuilder.File(ModelBuilder.Group("Arms", ModelBuilder.Pixel("Arm", new Bounds(0, 0, 50, 60))), ModelBuilder.Pixel("Body", Whole));
        file.Find("Arms").Visible = false;
        Assert.Equal([6000L], Measure(file).Parts.Select(part => part.VisibleArea));
        Assert.Equal([3000L, 3000L], Measure(file, new CoverOptions { IncludeHidden = true }).Parts.Select(part => part.VisibleArea));
    }

    [Theory]
    [InlineData(BlendMode.Normal, 255, 255, BlendMode.PassThrough, 255, true)]
    [InlineData(BlendMode.Normal, 128, 255, BlendMode.PassThrough, 255, true)]
    [InlineData(BlendMode.Normal, 255, 255, BlendMode.Normal, 255, true)]
    [InlineData(BlendMode.Normal, 127, 255, BlendMode.PassThrough, 255, false)]
    [InlineData(BlendMode.Normal, 255, 100, BlendMode.PassThrough, 255, false)]
    [InlineData(BlendMode.Normal, 180, 255, BlendMode.PassThrough, 180, false)]
    [InlineData(BlendMode.Multiply, 255, 255, BlendMode.PassThrough, 255, false)]
    [InlineData(BlendMode.Normal, 255, 255, BlendMode.Screen, 255, false)]
    public void What_shows_what_lies_behind_hides_nothing(BlendMode mode, byte opacity, byte fill, BlendMode groupMode, byte groupOpacity, bool hides)
    {
        var arm = ModelBuilder.Pixel("Arm", new Bounds(0, 0, 50, 60));
        (arm.BlendMode, arm.OpacityByte, arm.FillOpacity) = (mode, opacity, fill);
        var group = ModelBuilder.Group("Arms", arm);
        (group.BlendMode, group.OpacityByte) = (groupMode, groupOpacity);
        var cover = Measure(ModelBuilder.File(group, ModelBuilder.Pixel("Body", Whole)));
        Assert.Equal(hides ? 3000 : 6000, cover.Parts[1].VisibleArea);
        Assert.Equal(3000, cover.Parts[0].VisibleArea);
    }

    [Fact]
    public void Sketches_guides_backdrops_and_what_is_in_groups_of_them_neither_count_nor_cover()
    {
        var file = ModelBuilder.File(
            ModelBuilder.Pixel("Guide", Whole), ModelBuilder.Group("Sketches", ModelBuilder.Pixel("Arm", Whole)), ModelBuilder.Pixel("Body", Whole), ModelBuilder.Pixel("Background", Whole));
        Assert.Equal(("Body", 6000L), Assert.Single(Measure(file).Parts.Select(part => (part.LayerPath, part.VisibleArea))));
    }

    [Fact]
    public void Pixels_less_than_half_opaque_do_not_count()
    {
        var alpha = Enumerable.Range(0, 256).Select(value => (byte)value).ToArray();
        Assert.Equal(128, Measure(ModelBuilder.File(ModelBuilder.Pixel("Arm", new Bounds(0, 0, 64, 4), alpha))).Parts.Single().Area);
    }

    [Fact]
    public void Groups_stand_for_their_parts_and_clipped_layers_for_their_base()
    {
        var file = ModelBuilder.File(
            ModelBuilder.Group("Arms", ModelBuilder.Pixel("Arm L"), ModelBuilder.Pixel("Arm R")), ModelBuilder.Pixel("Shade", clipped: true), ModelBuilder.Pixel("Body", Whole), ModelBuilder.Pixel("Leg"));
        Assert.Equal(["Arms/Arm L", "Arms/Arm R"], Measure(file, chosen: ["Arms", "Arms/Arm R"]).Parts.Select(part => part.LayerPath));
        var body = Measure(file, chosen: ["Shade"]).Parts.Single();
        Assert.Equal(("Body", 5992L), (body.LayerPath, body.VisibleArea));
    }

    private static FigureCover Measure(LayerFile file, CoverOptions? options = null, string[]? chosen = null) =>
        FigureCover.Measure(file, chosen?.Select(path => file.Find(path)) ?? file.GetLayers(), options, TestContext.Current.CancellationToken);
}
