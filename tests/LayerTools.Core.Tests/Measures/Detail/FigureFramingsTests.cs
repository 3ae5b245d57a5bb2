using LayerTools.Measures.Detail;
using LayerTools.Measures.Survey;
using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Profiles;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Measures.Detail;

public class FigureFramingsTests
{
    private static readonly NameReader Names = new(new NamingStyle { Vocabulary = Vocabulary.BuiltIn });

    [Fact]
    public void Face_and_bust_go_by_names_and_the_figure_by_all_parts()
    {
        var file = File("hero.psd", 400, 900,
            Part("Hat", 120, 20, 160, 60),
            Group("Eye L", Part("Layer 4", 210, 130, 40, 20)),
            Part("Face", 150, 80, 100, 120),
            Clip(Part("Face shade", 0, 0, 400, 900)),
            Part("Hair side L", 260, 60, 40, 500),
            Part("Arm L", 300, 240, 80, 300),
            Part("Torso", 130, 220, 140, 200),
            Part("Boot L", 200, 800, 60, 60),
            Hide(Part("Mouth 2", 0, 0, 400, 400)),
            Part("Sketch", 0, 0, 400, 900));
        var found = Framings(file);

        Assert.Equal(new Bounds(150, 80, 250, 200), found.Find(FramingKind.Face));
        Assert.Equal(new Bounds(120, 20, 280, 320), found.Find(FramingKind.Bust));
        Assert.Equal(new Bounds(120, 20, 380, 860), found.Find(FramingKind.Figure));
    }

    [Fact]
    public void Without_a_torso_the_bust_ends_half_a_face_below_it() =>
        Assert.Equal(new Bounds(150, 80, 250, 260), Framings(File("hero.psd", 400, 900, Part("Face", 150, 80, 100, 120))).Find(FramingKind.Bust));

    [Fact]
    public void Without_a_face_there_is_neither()
    {
        var found = Framings(File("hero.psd", 400, 900, Part("Layer 1", 150, 80, 100, 120)));

        Assert.Null(found.Find(FramingKind.Face));
        Assert.Null(found.Find(FramingKind.Bust));
        Assert.Null(Framings(File("hero.psd", 400, 900)).Find(FramingKind.Figure));
    }

    [Fact]
    public void Japanese_names_do_as_well() =>
        Assert.Equal(new Bounds(150, 80, 250, 200), Framings(File("hero.psd", 400, 900, Part("顔", 150, 80, 100, 120), Part("靴 左", 0, 800, 50, 50))).Find(FramingKind.Face));

    [Theory]
    [InlineData(1920, 1080, 960, 1080, ScreenSide.Height, 1.0)]
    [InlineData(1920, 1080, 1920, 500, ScreenSide.Width, 1.0)]
    [InlineData(1920, 1080, 480, 540, ScreenSide.Height, 2.0)]
    [InlineData(1920, 1080, 3840, 1000, ScreenSide.Width, 0.5)]
    [InlineData(1080, 1920, 540, 540, ScreenSide.Width, 2.0)]
    public void A_framing_fills_the_side_of_the_screen_that_it_meets_first(int screenWidth, int screenHeight, int width, int height, ScreenSide side, double ratio)
    {
        var fit = new ScreenFit(Bounds.FromSize(100, 50, width, height), new ScreenSize("test", screenWidth, screenHeight));

        Assert.Equal(side, fit.Side);
        Assert.Equal(ratio, fit.Ratio, 12);
        Assert.Equal(fit.Box, fit.View.Intersect(fit.Box));
        Assert.Equal(screenWidth / ratio, fit.View.Width, 2.0);
        Assert.Equal(screenHeight / ratio, fit.View.Height, 2.0);
    }

    [Fact]
    public void The_needed_canvas_grows_with_the_ratio_and_its_memory_with_the_square()
    {
        var file = File("hero.psd", 601, 800, Part("Face", 100, 100, 240, 270), Part("Torso", 100, 400, 240, 270));
        var profile = new LayerProfile { Name = "test", Naming = new NamingStyle { Vocabulary = Vocabulary.BuiltIn } };

        var detail = Assert.Single(new DetailReader(profile, [ScreenSize.Common]).Read(file, [FramingKind.Face], _ => { }, TestContext.Current.CancellationToken));

        Assert.Equal(4, detail.Ratio);
        Assert.True(detail.ShowsPixels);
        Assert.Equal(0.25, detail.ClosestZoom);
        Assert.Equal((1920, 1080), (detail.ClosestWidth, detail.ClosestHeight));
        Assert.Equal((2404, 3200), (detail.NeededCanvasWidth, detail.NeededCanvasHeight));
        Assert.Equal(601 * 800 * 4 / 1048576.0, detail.CanvasMB);
        Assert.Equal(2404 * 3200 * 4 / 1048576.0, detail.NeededCanvasMB);
        Assert.Equal(2 * 240 * 270 * 4 / 1048576.0, detail.TexturesMB);
        Assert.Equal(16 * detail.TexturesMB, detail.NeededTexturesMB);
    }

    [Fact]
    public void What_is_not_found_is_told()
    {
        var profile = new LayerProfile { Name = "test", Naming = new NamingStyle { Vocabulary = Vocabulary.BuiltIn } };
        var warnings = new List<string>();

        var found = new DetailReader(profile, [ScreenSize.Common]).Read(File("hero.psd", 400, 900, Part("Boot", 0, 0, 10, 10)),
            [FramingKind.Figure, FramingKind.Face], warnings.Add, TestContext.Current.CancellationToken);

        Assert.Equal(FramingKind.Figure, Assert.Single(found).Framing);
        Assert.Contains("No face was found", Assert.Single(warnings), StringComparison.Ordinal);
    }

    private static FigureFramings Framings(LayerFile file) => new(FigureSurvey.Take(file, TestContext.Current.CancellationToken), layer => Names.Read(layer.Name));

    private static Layer Part(string name, int left, int top, int width, int height) => Painting.Of(name).Rectangle(left, top, width, height).ToLayer();

    private static Layer Clip(Layer layer)
    {
        layer.Clipped = true;
        return layer;
    }

    private static Layer Hide(Layer layer)
    {
        layer.Visible = false;
        return layer;
    }
}
